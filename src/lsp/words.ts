import type { DirectiveName } from '../read/index.ts';

/** What each directive is for, for authors; the handbook says more. */
export const directiveWords: Readonly<Record<DirectiveName, string>> = {
  here: 'Names the position: `:here[name]`, or `:here[name "Title for readers"]`. Other places of the course link to it.',
  mark: 'Marks squares on the board, such as `:mark[e5 f4]`.',
  plan: 'Arrows for a plan, such as `:plan[f3-e5]`.',
  threat: 'Arrows for a threat, such as `:threat[d3-h7]`.',
  guard: 'Arrows for what is guarded, such as `:guard[f1-e1]`.',
  claim: 'A statement that is proved on the board, such as `:claim[isolated d5]`.',
  same: 'This position is the one of that name, reached by other moves; proved.',
  later: '“We come to this later”: the name stands later in the course; proved.',
  end: 'The line stops here on purpose, for the reason given.',
  option: 'This move is an alternative, not the advice; nothing behind it is asked in practice.',
  learn: 'What practice asks from here on: `all`, `main` or `none`.',
  judge: 'A judgement that no board decides; it is listed and asked again at the next edition.',
  todo: 'A note of what is left to do: `check` lists it, and nothing is published while it stands.',
  allow: 'Switches a rule off for this line of the file: the rule’s id and a reason.',
};

export const blockWords: Readonly<Record<string, string>> = {
  moves: 'Lines of moves, in the movetext of PGN.',
  diagram: 'A still board.',
  exercise: 'A question that the student answers on the board.',
  game: 'A whole game, which illustrates.',
  pattern: 'A placement that positions share: a structure, a set-up.',
};

export const attributeWords: Readonly<Record<string, string>> = {
  from: 'The named position that the block starts from; of a game, the first position that is shown.',
  to: 'The last position of the game that is shown: a move number or a name.',
  at: 'The named position.',
  fen: 'The position as FEN.',
  after: 'The position after these moves from the initial one.',
  before: 'The move that the other side makes first.',
  view: 'The side at the bottom of the board.',
  learn: 'What practice asks of the block.',
  file: 'The file of the game, such as games/model.pgn.',
  number: 'Which game of the file, from 1.',
};

export const settingWords: Readonly<Record<string, string>> = {
  title: 'The title.',
  id: 'Names it through all editions, so that what a reader has practised is found again.',
  side: 'The side that the course teaches.',
  author: 'Who wrote it.',
  summary: 'One sentence for readers.',
  language: 'The language of the text, such as `en`.',
  site: 'The address that the course will be published at.',
  licence: 'What others may do with it.',
  rules: 'How strict each rule is: its id with `error`, `warning` or `off`.',
  notation: 'How moves are written for readers.',
  begins: 'The name of the position where the course’s subject starts.',
  cover: 'The name of the position on the first page.',
  for: 'Whom the course is for.',
  teaches: 'What a student knows in the end, a sentence each.',
  engine: 'From when on what an engine says is told, in pawns.',
  margin: 'What advice may lose against the best move, in pawns.',
  bad: 'What a move of the other side may lose without a sign, in pawns.',
  reply: 'What a reply that is not covered may be better than all that are, in pawns.',
  equal: 'How near two moves are that count as equally good, in pawns.',
  learn: 'What practice asks of the chapter.',
  draft: 'Whether it is unfinished: then it is not published.',
};

export const bodyWords: Readonly<Record<string, string>> = {
  caption: 'The text below the board.',
  alt: 'The position in words, for those who do not see it.',
  mark: 'Squares to mark, such as `e5 f4`.',
  plan: 'Arrows for a plan, such as `f3-e5`.',
  threat: 'Arrows for a threat.',
  guard: 'Arrows for what is guarded.',
  claim: 'A statement that is proved on the board, or a list of them.',
  ask: 'The question.',
  answer: 'The moves that answer it.',
  also: 'Good moves that are not the answer, with a comment each.',
  wrong: 'Wrong moves that students try, with a comment each.',
  before: 'The move that the other side makes first.',
  hint: 'A hint, or several.',
  title: 'The title.',
  white: 'White’s pawns and pieces, such as `d4 Bd3 Nf3`.',
  black: 'Black’s pawns and pieces.',
  empty: 'Squares that are empty.',
  at: 'Names of positions where it must hold.',
  reversed: 'Whether it also holds with the colours exchanged.',
  advice: 'A move that is advised wherever it stands.',
  text: 'What is said wherever it stands.',
  except: 'Names of positions where advice, claims and text do not hold.',
};
