import path from 'node:path';
import { uriOf } from '../addresses.ts';
import { courseFolder } from './course-folder.ts';
import { type OpenSession, openSession } from './open-session.ts';

export const one = `---
title: One
---

# The start

\`\`\`moves
1. d4 d5 2. c4 {:here[gambit "The gambit"] A pawn for the centre.
Two lines of it.} e6
  ( 2... c6 3. Nf3 )
3. Nc3
\`\`\`

So \`2.c4 e6\` it is, 𝕏 and [there](pos:end).
`;
const two = `---
title: Two
---

\`\`\`moves from="gambit"
2... Nf6 3. Nc3 {:here[end] :claim[material 0 since gambit]} e6
\`\`\`

\`\`\`moves fen="r1bqkbnr/pppp1ppp/2n5/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w KQkq - 2 3"
3. Bb5 {:here[pin]} a6 ( 3... Nf6 ) 4. Ba4
\`\`\`
`;
export const settings = 'title: A\nid: a\nside: white\ncover: "gambit"\n';

/** What stands before the blocks of a chapter. */
export const front = '---\ntitle: One\n---\n\n';

/** A course of two chapters, and an editor that has the first one open. */
export function smallCourse() {
  const course = courseFolder({
    'course.yaml': settings,
    'chapters/1.md': one,
    'chapters/2.md': two,
    'notes.md': 'Notes.\n',
  });
  const uri = uriOf(path.join(course.folder, 'chapters/1.md'));
  let session: OpenSession | undefined;
  let version = 1;
  return {
    folder: course.folder,
    uri,
    second: uriOf(path.join(course.folder, 'chapters/2.md')),
    textDocument: { uri },
    version: () => version,
    async begin(): Promise<OpenSession> {
      session = await openSession();
      await session.open(uri, one);
      return session;
    },
    async end(): Promise<void> {
      await session?.close();
      course.remove();
    },
    /** Puts another text in the place of the first chapter. */
    async write(text: string): Promise<void> {
      version += 1;
      await session?.change(uri, text, version);
    },
    /** Counts a change that a test sends itself. */
    nextVersion(): number {
      version += 1;
      return version;
    },
  };
}
