import { inLettersOf } from '../../read/index.ts';
import { chapterBudget, isClaimFault, judgeClaim, parseClaim } from '../claims/index.ts';
import { claimsOf } from '../course-claims/claims-of.ts';
import { defineCourseRule } from '../course-rule.ts';

export const claimFalse = defineCourseRule({
  id: 'claim-false',
  severity: 'error',
  finds: 'A claim that the board refutes, or that a search could not decide.',
  documentation: `
A claim says of a position what a reader would otherwise have to believe. Each has one precise
definition; the handbook has a page of them. The message says what on the board is at odds with
the claim: either the text is wrong, or it speaks of another position than the author had in mind.

A claim that speaks of something that is not there, such as \`isolated d5\` where no pawn stands on
d5, is false, and so is its denial. A claim that takes a search, such as \`mate in 5\`, may end
without an answer; that is reported too, since nothing unproved is published as proved.
`,
  examples: [
    {
      title: 'The pawn has a neighbour',
      course: '```moves\n1. d4 d5 2. c4 c6 {:claim[isolated d5]} 3. Nf3\n```',
      findings: [
        {
          at: '2:27-2:38',
          message:
            '`isolated d5` is false after 2...c6: the black pawns on c6 and e7 stand beside its file.',
        },
      ],
    },
    {
      title: 'One of two claims is false, and the finding stands at it',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 {:claim[check and material +3]}\n```',
      findings: [
        {
          at: '2:47-2:52',
          message: "`check` is false after 4.Bxc6: nothing attacks Black's king on e8.",
        },
      ],
    },
    {
      title: 'A denied claim, and what is true instead',
      course:
        '```moves\n1. e4 e5 2. Nf3 d6 3. d4 Bg4 {:claim[not pinned f3 and pinned f3]} 4. h3 Bh5 5. Bb5+ {:claim[not check]}\n```',
      findings: [
        {
          at: '2:56',
          message:
            '`pinned f3` is false after 3...Bg4: f3 and the king on e1 share no rank, file or diagonal.',
          hint: 'Here `pinned f3 to d1` is true.',
        },
        {
          at: '2:94',
          message: '`not check` is false after 5.Bb5+: the bishop on b5 attacks the king on e8.',
        },
      ],
    },
    {
      title: 'None of the claims that `or` joins is true',
      course: '```moves\n1. e4 e5 2. Nf3 {:claim[open d or half-open e white or check]}\n```',
      findings: [
        {
          at: '2:25-2:61',
          message:
            "`open d or half-open e white or check` is false after 2.Nf3: for `open d`, the pawns on d2 and d7 stand on the d-file; for `half-open e white`, the white pawn on e4 stands on the e-file; for `check`, nothing attacks Black's king on e8.",
        },
      ],
    },
    {
      title: 'What would be',
      course:
        '```moves\n1. e4 d6 2. d4 Nf6 3. Nc3 g6 {:claim[after Bg5 Bg7: pinned f6 to d8 or loose g5]} 4. Bg5 {:claim[after Bd1: check and after pass Bxf6: material 0]}\n```',
      findings: [
        {
          at: '2:109',
          message:
            "`check` is false after 4.Bg5: Bd1 cannot be played: no bishop of Black's can reach d1.",
        },
        {
          at: '2:136',
          message: '`material 0` is false after 4.Bg5: after pass Bxf6, White has one knight more.',
          hint: 'Here `after pass Bxf6: material +3` is true.',
        },
      ],
    },
    {
      title: 'Claims in prose and in a diagram',
      course:
        '```moves\n1. e4 c5\n```\n\nBlack attacks d4 :claim[attacks c5 d4] and e5 :claim[attacks c5 e5].\n\n```diagram fen="4k3/8/8/8/8/8/4P3/4K3 w - - 0 1"\nclaim:\n  - passed e2\n  - open e\n```',
      findings: [
        {
          at: '5:54',
          message: '`attacks c5 e5` is false after 1...c5: the pawn on c5 attacks only b4 and d4.',
        },
        {
          at: '10:5-10:11',
          message: '`open e` is false in this diagram: the pawn on e2 stands on the e-file.',
        },
      ],
    },
    {
      title: 'Claims in the lines of an exercise',
      course:
        '```exercise after="1. f3 e5 2. g4"\nask: Mate?\nanswer: 2... Qh4# {:claim[mate]}\nwrong: 2... d5 {attacks e4. :claim[attacks d5 e4 and check]}\n```',
      findings: [
        {
          at: '4:54-4:59',
          message: "`check` is false after 2...d5: nothing attacks White's king on e1.",
        },
      ],
    },
    {
      title: 'Nothing stands there: neither the claim nor its denial is true',
      course: '```moves\n1. e4 {:claim[not loose e5]}\n```',
      findings: [{ at: '2:15', message: '`not loose e5` is false after 1.e4: e5 is empty.' }],
    },
    {
      title: 'A search without an end',
      course: '```diagram fen="8/8/8/3k4/8/8/8/KQ6 w - - 0 1"\nclaim: mate in 9\n```',
      findings: [
        {
          at: '2:8',
          message:
            '`mate in 9` could not be decided in this diagram: the search has seen 5 million positions and found no mate in 4 moves or fewer.',
        },
      ],
    },
    {
      title: 'True claims; material since a named position; replies in all chapters',
      side: 'black',
      course: {
        'chapters/1.md':
          '```moves\n1. d4 d5 2. c4 {:here[gambit]} 2... dxc4 {:claim[material +1 since gambit]}\n```',
        'chapters/2.md':
          '```moves\n1. d4 d5 {:claim[replies 2 and not can-castle white king]} 2. Nf3\n```',
      },
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const budget = { left: chapterBudget };
    const spelled = (claim: string) => inLettersOf(chapter.pieces, claim);
    for (const { statement, where, context, placeOf } of claimsOf(chapter, course, budget)) {
      const claim = parseClaim(statement.argument, course.own.claims);
      // What cannot be read has a finding of its own, and so has a position that is not reached.
      if (!context || isClaimFault(claim)) continue;
      const named = claim.parts.flatMap(({ labels }) => labels);
      if (named.some(({ text }) => course.ask('name', text) === undefined)) continue;
      for (const { part, undecided, because, instead } of judgeClaim(claim, context)) {
        yield {
          place: placeOf(part.offset, part.length),
          message: `\`${spelled(part.text)}\` ${undecided ? 'could not be decided' : 'is false'} ${where}: ${because}.`,
          ...(instead === undefined ? {} : { hint: `Here \`${spelled(instead)}\` is true.` }),
        };
      }
    }
  },
});
