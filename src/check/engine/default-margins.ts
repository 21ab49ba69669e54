import type { EngineMargins } from '../../model/index.ts';

/**
 * From when on what an engine says is told, in pawns, unless the setting `engine` says otherwise. Common practice,
 * no source: two searches of one position differ by a few tenths, and a pawn is the least that a student notices.
 */
export const defaultMargins: EngineMargins = { margin: 0.8, bad: 1.5, reply: 0.8, equal: 0.2 };
