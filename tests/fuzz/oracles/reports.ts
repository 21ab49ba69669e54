import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import AjvDraft04 from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import { rules } from '../../../src/check/index.ts';
import {
  reportGithub,
  reportJson,
  reportSarif,
  reportText,
} from '../../../src/diagnostics/index.ts';
import type { Oracle } from '../case.ts';
import type { CourseRun } from './course-run.ts';

// The schema of the OASIS committee (2.1.0, release 5), as shipped by @microsoft/jest-sarif.
const schemaFile = createRequire(import.meta.url).resolve(
  '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json',
);
const ajv = new AjvDraft04.default({ strict: false, unicodeRegExp: false });
addFormats.default(ajv as never);
const isSarif = ajv.compile(JSON.parse(readFileSync(schemaFile, 'utf8')));

/** The four reports are what programs and terminals take them for. */
export const soundReports: Oracle<CourseRun> = {
  name: 'sound reports',
  *examine({ files, diagnostics }) {
    const textOf = (file: string) => (Object.hasOwn(files, file) ? files[file] : undefined);
    const text = reportText(diagnostics, { textOf, color: false });
    // C0 but for the line feed, DEL and C1 (ECMA-48) are what a terminal acts on.
    const control = /(?!\n)\p{Cc}/u.exec(text);
    if (control) yield `control character ${JSON.stringify(control[0])} for the terminal`;
    const told = JSON.parse(reportJson(diagnostics)).diagnostics.length;
    if (told !== diagnostics.length) yield `${told} findings as JSON, of ${diagnostics.length}`;
    const lines = reportGithub(diagnostics).split('\n').slice(0, -1);
    if (lines.length !== diagnostics.length) {
      yield `${lines.length} lines of annotations for ${diagnostics.length} findings`;
    }
    const wrong = lines.find((line) => !/^::(?:error|warning) file=[^,]+,line=\d+/.test(line));
    if (wrong !== undefined) yield `no annotation: ${JSON.stringify(wrong)}`;
    const sarif = reportSarif(diagnostics, { version: '0.0.0', rules });
    if (!isSarif(JSON.parse(sarif))) yield `SARIF: ${ajv.errorsText(isSarif.errors)}`;
  },
};
