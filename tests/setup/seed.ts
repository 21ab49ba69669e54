import fc from 'fast-check';
import { seed } from './runs.ts';

fc.configureGlobal({ seed });
