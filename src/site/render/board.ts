import { drawBoardInPage } from '../../draw/index.ts';

export { drawBoardInPage };
