/** What commands print as JSON, as schemas: the handbook's page is made of them, and real output is held against them. */
import { z } from 'zod';

const list = <T extends z.ZodType>(item: T) => z.array(item).readonly();

const version = z.literal(1).describe('of all JSON that commands print');

const point = z
  .strictObject({
    line: z.int().min(1).describe('from 1'),
    column: z.int().min(1).describe('from 1, in UTF-16 units'),
  })
  .meta({ id: 'point', description: 'A point in a text.' });

const place = {
  file: z.string().describe('relative to the course folder, with `/`'),
  start: point.describe('the first character'),
  end: point.describe('behind the last character'),
};

const color = z.enum(['white', 'black']);
const side = z.enum(['white', 'black', 'both']);
const position = z.string().describe('the first four fields of a FEN');
const san = z.string().describe('canonical SAN, in English letters');

const finding = z
  .strictObject({
    rule: z.string().describe('the id of the rule'),
    help: z.url().optional().describe('the rule in a published handbook, where one is named'),
    severity: z.enum(['error', 'warning']).describe('as the course sets it'),
    ...place,
    message: z.string().describe('what is wrong, in one sentence'),
    hint: z.string().optional().describe('what to do'),
    related: list(
      z
        .strictObject({ ...place, message: z.string().describe('what stands there') })
        .meta({ id: 'related place', description: 'Another place that has a part in it.' }),
    ).describe('other places'),
    fixes: list(
      z
        .strictObject({ ...place, text: z.string().describe('what takes its place') })
        .meta({ id: 'fix', description: 'A repair: what stands at the place is replaced.' }),
    )
      .optional()
      .describe('repairs that mend it together, as `--fix` makes them'),
  })
  .meta({ id: 'finding', description: 'What a rule says of a place.' });

const judgement = {
  ...place,
  date: z.string().optional().describe('as in `2026-11-25`'),
  text: z.string().describe('the judgement'),
  after: z.string().optional().describe('the move behind which it stands, with its number'),
  fen: z.string().optional().describe('the position that it is about'),
};

const move = z
  .strictObject({ san, number: z.int().describe('its number'), color })
  .meta({ id: 'move', description: 'A move.' });

const playedMove = z
  .strictObject({ san, color, number: z.int().describe('its number in the game') })
  .meta({ id: 'played move', description: 'A move of a game.' });

const head = {
  number: z.int().describe('its place in the file, from 1'),
  white: z.string().describe('a name; empty where none is given, as all tags'),
  black: z.string().describe('a name'),
  event: z.string().describe('as the tag has it'),
  date: z.string().describe('as the tag has it'),
  result: z.enum(['1-0', '0-1', '1/2-1/2', '*']),
};

const leaving = z
  .enum(['advised', 'covered', 'known', 'ended', 'within'])
  .describe(
    'how they part: another move was played than advised; a reply that is not covered; a move beside those that the course knows; the course ended; the game ended',
  );
const by = color.optional().describe('who left; absent where the course or the game ended');

const game = z
  .discriminatedUnion('kind', [
    z.strictObject({
      ...head,
      kind: z.literal('met'),
      leaving,
      by,
      position: position.describe(
        'the last one that the course has, the first four fields of a FEN',
      ),
      last: playedMove.optional().describe('the move that led there'),
      next: playedMove.optional().describe('the move that was played there'),
      aside: z
        .strictObject({ position, next: playedMove })
        .meta({ id: 'step aside', description: 'A move of the course beside its advice.' })
        .optional()
        .describe('where the course’s side first played such a move'),
    }),
    z.strictObject({ ...head, kind: z.enum(['apart', 'empty']) }),
    z.strictObject({
      ...head,
      kind: z.literal('broken'),
      fault: z
        .strictObject({
          kind: z.enum([
            'illegal',
            'ambiguous',
            'unreadable',
            'comment-unclosed',
            'variation-unclosed',
            'start',
            'too-long',
          ]),
          written: z.string().describe('what stands in the game'),
          at: z.string().describe('the number of the move, as in `12...`'),
          reason: z.string().describe('why, about the board'),
        })
        .meta({ id: 'fault', description: 'Why a game cannot be followed.' }),
    }),
    z.strictObject({ ...head, kind: z.literal('variant'), variant: z.string() }),
  ])
  .meta({
    id: 'compared game',
    description:
      'A game against the course. It `met` it, stayed `apart`, has no moves (`empty`), is `broken`, or is of another `variant` of chess.',
  });

const count = z.int().min(0);

const row = z
  .strictObject({
    position,
    line: list(san).optional().describe('the way of the course that leads there'),
    place: z.string().optional().describe('where the course shows it, `file:line`'),
    leaving,
    onPurpose: z.boolean().optional().describe('where the course ended: whether by `:end`'),
    by,
    course: list(
      z
        .strictObject({
          san,
          kind: z
            .enum(['advice', 'option', 'bad', 'reply'])
            .describe('what the course makes of it'),
        })
        .meta({ id: 'course move', description: 'A move that the course has in a position.' }),
    ).describe('what it has here: its advice, else all moves'),
    played: list(
      z
        .strictObject({ san, games: count })
        .meta({ id: 'played instead', description: 'A move by which games left.' }),
    ).describe('the most frequent first'),
    score: z.strictObject({ won: count, drawn: count, lost: count }).meta({
      id: 'score',
      description: 'Games of the course’s side; of White in a course for both.',
    }),
    games: list(z.int()).describe('their numbers'),
  })
  .meta({ id: 'parting position', description: 'A position in which games leave the course.' });

const spot = z
  .strictObject({
    chapter: z.string().describe('id of the chapter'),
    file: z.string(),
    after: move.optional().describe('the move that leads there'),
    label: z.string().optional().describe('a name of the position'),
    id: z.string().describe('id within the chapter’s page'),
    stands: z.boolean().describe('whether the new edition has the place'),
  })
  .meta({ id: 'spot', description: 'A place in an edition of the course.' });

const positions = count.describe('new positions behind it, or those that are gone with it');
const change = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('advice'),
      at: spot,
      old: move.optional(),
      new: move.optional(),
      reason: z.string().optional().describe('the author’s'),
      positions,
    }),
    z.strictObject({
      kind: z.literal('reply'),
      at: spot,
      move,
      answer: move.optional(),
      positions,
    }),
    z.strictObject({
      kind: z.enum(['extended', 'option', 'start']),
      at: spot,
      move: move.optional(),
      positions,
    }),
    z.strictObject({ kind: z.literal('judged'), at: spot, move, bad: z.boolean() }),
    z.strictObject({
      kind: z.literal('assessment'),
      at: spot,
      old: z.int().describe('a NAG'),
      new: z.int().describe('a NAG'),
    }),
    z.strictObject({ kind: z.literal('dropped'), at: spot, move: move.optional(), positions }),
    z.strictObject({
      kind: z.literal('exercise'),
      what: z.enum(['new', 'changed', 'dropped']),
      number: z.int().describe('within its chapter'),
      at: spot,
    }),
    z.strictObject({
      kind: z.literal('pattern'),
      what: z.enum(['new', 'changed', 'said', 'dropped']),
      title: z.string(),
      at: spot,
    }),
  ])
  .meta({ id: 'change', description: 'One difference, on the board.' });

const whereabouts = {
  position,
  places: list(
    z
      .strictObject({
        file: z.string().describe('the chapter’s, or that of a game which it shows'),
        line: z.int().min(1).describe('from 1'),
        column: z.int().min(1).describe('from 1, in UTF-16 units'),
        chapter: z.string().describe('its title'),
        draft: z.literal(true).optional().describe('where the chapter is a draft'),
        block: z.enum(['moves', 'diagram', 'exercise', 'game', 'pattern']),
        after: z
          .string()
          .optional()
          .describe('the move with its number; absent where a block starts'),
        names: list(z.string()).describe('that `:here` gives it there'),
        address: z.string().describe('of the page, with the position where it has an address'),
      })
      .meta({ id: 'place of a position', description: 'A place that shows a position.' }),
  ),
  moves: list(
    z
      .strictObject({
        san,
        kind: z.enum(['advice', 'option', 'bad', 'reply']),
        name: z.string().describe('with its number'),
      })
      .meta({ id: 'move of a course', description: 'What the course has in a position.' }),
  ),
  ends: z.string().optional().describe('why a line ends there, as `:end` says'),
  ways: list(z.string()).describe('moves that lead there, the fewest first'),
  moreWays: z.boolean().describe('whether there are more'),
};

const laidAt = {
  fen: z.string(),
  way: z.string().describe('the moves that lead there'),
  file: z.string().optional().describe('where the course has the position'),
  line: z.int().optional(),
  games: list(z.int()).describe('their numbers in the file'),
};

const comparison = {
  course: z
    .strictObject({
      title: z.string(),
      side,
      edition: z.string().describe('another one for every change of the course'),
    })
    .meta({ id: 'compared course', description: 'What the games were held against.' }),
  games: list(game).describe('one a line, as they are read'),
  positions: list(row).describe('that of most games first'),
  sums: z
    .strictObject({
      games: count,
      met: count,
      apart: count,
      empty: count,
      broken: count,
      variant: count,
      otherSide: count.describe('games of `--player` with the side that is not taught'),
    })
    .meta({ id: 'sums of games', description: 'How many games there were of each kind.' }),
};

const answer = {
  found: list(
    z.strictObject(whereabouts).meta({
      id: 'position of a course',
      description: 'Where it stands, and what is played.',
    }),
  ).describe('what was asked for; none where the course has it not'),
  alike: list(
    z
      .strictObject({
        differs: list(z.enum(['turn', 'castling', 'en-passant'])),
        ...whereabouts,
      })
      .meta({ id: 'like position', description: 'The same pieces, and another position.' }),
  ),
  nearest: list(
    z
      .strictObject({ squares: count.describe('on which they differ'), ...whereabouts })
      .meta({ id: 'near position', description: 'A position that differs on few squares.' }),
  ),
  known: z
    .strictObject({
      plies: count.describe('so many of the moves lead there'),
      next: z.string().optional().describe('the move that was given then'),
      ...whereabouts,
    })
    .meta({ id: 'known moves', description: 'How far the course has the moves.' })
    .optional(),
  stopped: z
    .strictObject({ move: z.string(), reason: z.string() })
    .meta({ id: 'stop', description: 'The first move that cannot be played.' })
    .optional(),
};

const folderOnShelf = z.string().describe('from the folder of `shelf.yaml`');

/** What a command prints; a field that is not named here is a fault. */
export const jsonOutputs = {
  check: {
    command: 'linewright check --format json',
    schema: z.strictObject({ version, diagnostics: list(finding) }),
  },
  judgements: {
    command: 'linewright check --judgements --format json',
    schema: z.strictObject({
      version,
      judgements: list(
        z.strictObject(judgement).meta({ id: 'judgement', description: 'What `:judge[…]` marks.' }),
      ),
    }),
  },
  compare: {
    command: 'linewright compare GAMES.pgn --format json',
    schema: z.strictObject({ version, ...comparison }),
  },
  compareShelf: {
    command: 'linewright compare GAMES.pgn SHELF --format json',
    schema: z.strictObject({
      version,
      courses: list(
        z
          .strictObject({ folder: folderOnShelf, ...comparison })
          .meta({ id: 'course compared', description: 'The games against a course of a shelf.' }),
      ).describe('in the order of the shelf; one that has errors is left out'),
    }),
  },
  import: {
    command: 'linewright import FILE.pgn --into DIR --format json',
    schema: z.strictObject({
      version,
      file: z.string().describe('the PGN file'),
      games: count,
      known: count.describe('positions of the file that the course has'),
      written: z.boolean().describe('whether `--write` has changed the course'),
      files: list(z.string()).describe('of the course: those that are changed, or would be'),
      new: list(
        z
          .strictObject({
            ...laidAt,
            moves: z.string().describe('the new line, with its alternatives in brackets'),
            refused: z.string().optional().describe('why no place of the course can take it'),
          })
          .meta({ id: 'new line', description: 'Moves that the course does not have.' }),
      ),
      against: list(
        z
          .strictObject({
            ...laidAt,
            move: san,
            rest: z.string().describe('what follows it'),
            advised: list(san),
          })
          .meta({
            id: 'other advice',
            description: 'A move that the course does not have where it advises another.',
          }),
      ),
      past: list(
        z
          .strictObject({
            ...laidAt,
            move: san,
            rest: z.string().describe('what follows it'),
          })
          .meta({
            id: 'move past the end',
            description: 'A move at a position where the course ends on purpose.',
          }),
      ),
      said: list(
        z
          .strictObject({ ...laidAt, text: z.string() })
          .meta({ id: 'said of a position', description: 'A comment of the file.' }),
      ),
      played: list(
        z
          .strictObject({ number: z.int(), name: z.string(), isThere: z.boolean() })
          .meta({ id: 'whole game', description: 'A game that is played to its end.' }),
      ),
      apart: list(
        z
          .strictObject({ number: z.int(), name: z.string() })
          .meta({ id: 'game apart', description: 'A game that never meets the course.' }),
      ),
      notes: list(
        z
          .strictObject({
            game: z.int(),
            line: z.int(),
            message: z.string(),
            text: z.string().optional().describe('what stands there'),
          })
          .meta({ id: 'import note', description: 'What was not read, or not as it stands.' }),
      ),
    }),
  },
  gaps: {
    command: 'linewright gaps --format json',
    schema: z.strictObject({
      version,
      course: z
        .strictObject({ title: z.string(), side })
        .meta({ id: 'course', description: 'What was looked at.' }),
      gaps: list(
        z
          .strictObject({
            position,
            line: list(san).describe('the way of the course that leads there'),
            reply: san,
            place: z
              .strictObject({
                file: z.string(),
                line: z.int(),
                column: z.int(),
                behind: z
                  .string()
                  .describe('a move with its number; empty at the start of a block'),
              })
              .meta({ id: 'place to write', description: 'Where an answer is to be written.' }),
            known: z
              .strictObject({ file: z.string(), line: z.int() })
              .meta({ id: 'known place', description: 'Where the course has a position.' })
              .optional()
              .describe('where the position that it leads to stands in the course'),
            engine: z
              .strictObject({
                engine: z.string(),
                depth: z.int(),
                rank: z.int().describe('among the engine’s moves, from 1'),
                score: z.string().describe('in pawns for the side to move; `#3` is mate in three'),
                loss: z.number().describe('behind its best move, in pawns'),
              })
              .meta({ id: 'engine score', description: 'What an engine says of a reply.' })
              .optional(),
            games: count.optional().describe('that played it'),
          })
          .meta({ id: 'gap', description: 'A reply that the course lacks.' }),
      ).describe('the most wanted first'),
      sums: z
        .strictObject({ gaps: count, enginePositions: count, games: count })
        .meta({ id: 'sums of gaps', description: 'What was looked at, and found.' }),
    }),
  },
  where: {
    command: 'linewright where POSITION --format json',
    schema: z.strictObject({ version, ...answer }),
  },
  whereOnShelf: {
    command: 'linewright where POSITION SHELF --format json',
    schema: z.strictObject({
      version,
      courses: list(
        z
          .strictObject({ folder: folderOnShelf, ...answer })
          .meta({ id: 'answer of a course', description: 'What a course of a shelf has of it.' }),
      ).describe(
        'in the order of the shelf; of a name, those that have it, and of `COURSE/NAME` that course',
      ),
    }),
  },
  changes: {
    command: 'linewright changes OLD NEW --format json',
    schema: z.strictObject({
      version,
      side: z
        .strictObject({ old: side, new: side })
        .meta({ id: 'two sides', description: 'Of the old and of the new edition.' })
        .optional()
        .describe('where the course is for another side now'),
      chapters: list(
        z
          .strictObject({
            id: z.string(),
            title: z.string(),
            status: z.enum(['new', 'kept', 'dropped']),
            positions: count.describe('new ones of a new chapter, or those that are gone'),
            changes: list(change),
          })
          .meta({ id: 'changed chapter', description: 'A chapter in which something changed.' }),
      ),
      judgements: list(
        z
          .strictObject({
            ...judgement,
            why: z
              .enum(['lines', 'old'])
              .describe('its lines have changed, or it is older than the edition before'),
          })
          .meta({ id: 'judgement to ask', description: 'A judgement that may have aged.' }),
      ),
    }),
  },
} as const;
