/** What the rule makes of one sentence in a course of one chapter. */
import { buildCourse } from '../../../model/index.ts';
import { readCourse } from '../../../read/index.ts';
import { summariseChapter } from '../../chapter-summary.ts';
import { checkOptions } from '../../check-course.ts';
import { type CourseView, createCourseView, makeCourseIndex } from '../../view/index.ts';
import { falseWords } from '../false-words.ts';
import type { FormName } from '../forms/index.ts';
import { judge, makeBudget } from '../judge.ts';
import { vocabularyFor } from '../languages/index.ts';
import { passagesOf } from '../passages.ts';
import { statementsIn } from '../statements.ts';

export interface SentenceInCourse {
  readonly language: string;
  readonly moves?: string | undefined;
  readonly fen?: string | undefined;
  readonly stands?: 'comment' | 'prose' | undefined;
  readonly below?: string | undefined;
  readonly side?: 'white' | 'black' | 'both' | undefined;
  readonly says: string;
}

export interface Reading {
  readonly findings: readonly string[];
  /** What was read as a statement, and whether it holds where the sentence stands. */
  readonly stated: readonly {
    readonly form: FormName;
    readonly words: string;
    readonly holds: boolean;
    readonly because: string;
  }[];
}

export function readSentence(sentence: SentenceInCourse): Reading {
  const {
    language,
    moves = '',
    fen,
    stands = 'comment',
    below = '',
    side = 'white',
    says,
  } = sentence;
  const comment = says !== '' && stands === 'comment' ? ` {${says}}` : '';
  const start = fen === undefined ? '' : ` fen="${fen}"`;
  const prose = stands === 'prose' ? `\n\n${says}` : '';
  const text = `\`\`\`moves${start}\n${moves}${comment}\n\`\`\`${prose}\n\n${below}\n`;
  const course = buildCourse(
    readCourse(
      {
        settings: {
          path: 'course.yaml',
          text: `title: A\nid: a\nside: ${side}\nlanguage: ${language}\n`,
        },
        chapters: [{ path: 'chapters/1.md', text }],
        games: [],
        media: [],
        problems: [],
      },
      { frontMatter: 'optional' },
    ),
  );
  const [chapter] = course.chapters;
  const vocabulary = vocabularyFor(language);
  if (!chapter || !vocabulary) throw new Error('no chapter, or no such language');
  const index = makeCourseIndex([summariseChapter(chapter, side)]);
  const view: CourseView = createCourseView(index, checkOptions(course.settings)).view;
  const stated = [...passagesOf(chapter, view)].flatMap((passage) =>
    [...statementsIn(passage, vocabulary)].flatMap((statement) => {
      const judged = judge(statement, passage, makeBudget());
      if (!judged) return [];
      const { holds, because } = judged.here;
      return [{ form: statement.form, words: statement.words, holds, because }];
    }),
  );
  return { findings: [...falseWords(chapter, view)].map(({ message }) => message), stated };
}
