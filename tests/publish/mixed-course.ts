import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** How an AVIF begins. */
const avif = Buffer.from('\0\0\0\x18ftypavif\0\0\0\0avifisom', 'latin1');

/** The smallest GIF: one pixel. */
const gif = Buffer.from('R0lGODlhAQABAIAAAP///wAAACH5BAAAAAAALAAAAAABAAEAAAICRAEAOw==', 'base64');

const first = `---
title: Läufer & <Springer>
id: erste
summary: Eine Zeile.
---

# Läufer & <Springer>

Text mit <b onclick="x()">HTML</b>, <tt>alt</tt>, <div align="center" width="3">Mitte</div>, einer
Fußnote[^1], [einem Verweis](pos:stamm), [dem zweiten Kapitel](02.md#der-zug), [Netz](https://example.org/a?b&c),
[nichts](02.md#gibt-es-nicht), [alle Stellungen](positions.html) und [einem Blatt](../media/blatt.pdf).

![Ein Punkt](../media/ein%20punkt.gif) ![Ein neues Format](../media/neu.avif) ![Fläche](../media/flach.svg)

[^1]: Die Note.

## 1. Die Züge

\`\`\`moves
1. e4 {:here[anfang] Ein langer Kommentar, der über den Zug mehr sagt, als man glauben möchte, nämlich viel.} e5
2. Nf3 ⩲ (2. f4 {:option[gut] :plan[f4-e5]} exf4 3. Nf3 (3. Bc4 d5 4. exd5 Qh4+ 5. Kf1) 3... g5 4. h4 $132) 2... Nc6 {:here[stamm]} 3. Bb5 a6 4. Ba4
\`\`\`

\`\`\`diagram at="stamm"
caption: Der *Stamm*.
mark: [e5]
threat: [f3-e5]
\`\`\`

\`\`\`exercise at="anfang"
ask: Was spielt Schwarz?
answer: 1... e5 2. Nf3
wrong: 1... f6 {Nein.}
hint: Die Mitte.
\`\`\`

> Ein Zitat

- Eins
- Zwei

1. Erstens

        const brett = 'leer';

---

| a | b |
| --- | ---: |
| 1 | \`2.Nf3\` |
`;

const second = `---
title: Zwei
---

## Der Zug

\`\`\`moves from="stamm"
3. Bb5 a6 4. Ba4 Nf6 5. O-O {:here[ruy2]}
\`\`\`

\`\`\`game
[White "Muster, Eva"]
[Black "?"]
[Date "2025.02.??"]
[Result "1-0"]

1. e4 e5 2. Nf3 d6 3. Bc4 h6 4. Nc3 Bg4 5. Nxe5 Bxd1 6. Bxf7+ Ke7 7. Nd5# 1-0
\`\`\`

\`\`\`pattern
title: Zwei Bauern
white: e4
black: e5
empty: d4
\`\`\`

Zurück zu [den Zügen](01.md#1-die-züge).
`;

/** Writes a course in German that has every kind of block, raw HTML, and pictures of many kinds. */
export function writeMixedCourse(folder: string): void {
  const files: Record<string, string | Uint8Array> = {
    'course.yaml':
      'title: "Spanisch: & mehr"\nid: spanisch\nside: white\nlanguage: de\nauthor: Eva Muster\n',
    'chapters/01.md': first,
    'chapters/02.md': second,
    'media/ein punkt.gif': gif,
    'media/neu.avif': avif,
    'media/flach.svg':
      '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><path d="M0 0h9v9z"/></svg>',
    'media/blatt.pdf': '%PDF',
  };
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    writeFileSync(path.join(folder, name), content);
  }
}
