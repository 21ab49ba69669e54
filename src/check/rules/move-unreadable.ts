import { defineCourseRule } from '../course-rule.ts';
import { makeMoveFaultRule } from '../shared/move-fault-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

const unreadableMoves = makeMoveFaultRule('unreadable', {
  id: 'move-unreadable',
  finds: 'Movetext that is no movetext: an unclosed comment or variation, a word that is no move.',
  documentation: `
A \`moves\` block is movetext in the import format of the PGN standard (section 8.2). What cannot be
read as such is told at its place, and all the rest of the block is read nevertheless. A word that is
one sign away from a move, such as \`Rel\` for \`Re1\`, counts as a move that cannot be played: what
follows it in its line is not judged.

Where \`pieces\` in course.yaml names a language, its letters alone are read, save in files of games/.

Comments do not nest: the first \`}\` ends a comment. A variation stands behind the move that it
replaces.
`,
  examples: [],
});

export const moveUnreadable = defineCourseRule({
  ...unreadableMoves,
  *inChapter(scope) {
    yield* unreadableMoves.inChapter?.(scope) ?? [];
    yield* problemsOf('move-unreadable', scope.chapter);
  },
  inCourse: (course) => problemsOf('move-unreadable', course),
  examples: [
    {
      title: 'An English letter that the language of `pieces` does not have',
      course: {
        'course.yaml': 'title: Test\nid: test\nside: both\npieces: de\n',
        'chapters/1.md': '```moves\n1. Sf3 Nf6\n```',
      },
      findings: [
        {
          at: '2:8-2:9',
          message: 'N is the English letter of the knight, and `pieces: de` is set.',
          hint: 'Write S; a game in English letters may stand in a file of games/.',
        },
      ],
      fixed: '```moves\n1. Sf3 Sf6\n```',
    },
    {
      title: 'A letter of no piece in the language that `pieces` names',
      course: {
        'course.yaml': 'title: Test\nid: test\nside: both\npieces: de\n',
        'chapters/1.md': '```moves\n1. Sf3 Sf6 2. Cc3\n```',
      },
      findings: [
        {
          at: '2:15-2:18',
          message:
            '2.Cc3 is no move: C stands for no piece: with `pieces: de` the letters are K, D, T, L and S.',
          hint: 'Did you mean c3 or Sc3?',
        },
      ],
    },
    {
      title: 'A letter that looks like a digit',
      course: '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. O-O Nf6 5. Rel! Be7 6. c3\n```',
      findings: [
        {
          at: '2:45-2:48',
          message: '5.Rel is no move: it ends with the letter l in place of the digit 1.',
          hint: 'Did you mean Re1?',
        },
      ],
    },
    {
      title: 'A block without moves',
      course: '```moves\n```',
      findings: [
        {
          at: '1:1-1:9',
          message: 'This `moves` block is empty.',
          hint: 'Write moves in it, such as `1. e4 e5`, or take it out.',
        },
      ],
    },
    {
      title: 'A variation that is never closed',
      course: '```moves\n1. e4 e5 (1... c5 2. Nf3\n```',
      findings: [
        {
          at: '2:10-2:11',
          message: 'This variation is opened here and never closed.',
          hint: 'Put ) after its last move.',
        },
      ],
    },
  ],
});
