import type { Strings } from '../index.ts';
import { page } from './page.ts';

export const de: Strings = { ...page };
