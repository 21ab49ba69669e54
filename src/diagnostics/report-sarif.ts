import { createHash } from 'node:crypto';
import type { Diagnostic } from './diagnostic.ts';
import type { Place } from './place.ts';
import { writeJson } from './printable.ts';

/** What the log says of a rule. */
export interface SarifRule {
  readonly id: string;
  readonly finds: string;
  readonly documentation: string;
  readonly severity: 'error' | 'warning';
}

export interface SarifOptions {
  readonly version: string;
  readonly rules: readonly SarifRule[];
}

/**
 * The findings as a SARIF 2.1.0 log (OASIS standard, 27 March 2020). Columns count UTF-16 units,
 * as the log declares; addresses are relative to the course folder.
 */
export function reportSarif(
  diagnostics: readonly Diagnostic[],
  { version, rules }: SarifOptions,
): string {
  const log = {
    $schema:
      'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: {
            name: 'Linewright',
            semanticVersion: version,
            rules: rules.map(({ id, finds, documentation, severity }) => ({
              id,
              shortDescription: { text: finds },
              help: { text: documentation.trim(), markdown: documentation.trim() },
              defaultConfiguration: { level: severity },
            })),
          },
        },
        columnKind: 'utf16CodeUnits',
        results: diagnostics.map((diagnostic) => makeResult(diagnostic, rules)),
      },
    ],
  };
  return writeJson(log);
}

function makeResult(diagnostic: Diagnostic, rules: readonly SarifRule[]) {
  const { rule, severity, place, message, hint, related, fixes } = diagnostic;
  return {
    ruleId: rule,
    ruleIndex: rules.findIndex(({ id }) => id === rule),
    level: severity,
    message: { text: hint === undefined ? message : `${message} ${hint}` },
    locations: [makeLocation(place)],
    // The sentence names the move and not its line, so the finding is known again after edits above.
    partialFingerprints: {
      'finding/v1': createHash('sha256').update(`${rule}\n${place.file}\n${message}`).digest('hex'),
    },
    ...(related.length === 0
      ? {}
      : {
          relatedLocations: related.map(({ place: there, message: text }, id) => ({
            id,
            ...makeLocation(there),
            message: { text },
          })),
        }),
    ...(fixes === undefined
      ? {}
      : {
          fixes: [
            {
              artifactChanges: fixes.map(({ place: there, text }) => ({
                artifactLocation: { uri: uriOf(there.file) },
                replacements: [{ deletedRegion: makeRegion(there), insertedContent: { text } }],
              })),
            },
          ],
        }),
  };
}

/** A path as a relative reference (RFC 3986): `#` and `?` of a name belong to it, too. */
function uriOf(file: string): string {
  return file
    .split('/')
    .map((name) => encodeURIComponent(name.replace(/\p{Surrogate}/gu, '\ufffd')))
    .join('/');
}

function makeLocation(place: Place) {
  return {
    physicalLocation: {
      artifactLocation: { uri: uriOf(place.file) },
      region: makeRegion(place),
    },
  };
}

function makeRegion({ start, end }: Place) {
  return {
    startLine: start.line,
    startColumn: start.column,
    endLine: end.line,
    endColumn: end.column,
  };
}
