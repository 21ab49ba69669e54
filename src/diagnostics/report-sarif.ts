import { createHash } from 'node:crypto';
import type { Diagnostic } from './diagnostic.ts';
import type { Place } from './place.ts';
import { writeJson } from './printable.ts';
import { ruleAddress } from './rule-address.ts';

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
  /** The course folder as seen from where the check runs, which is the root of a repository as a rule. */
  readonly root?: string | undefined;
  /** The address that the handbook is published at, which ends with `/`. */
  readonly handbook?: string | undefined;
}

/** What addresses are relative to. It has no address of its own, so the same findings give the same bytes. */
const baseId = 'ROOT';

/**
 * The findings as a SARIF 2.1.0 log (OASIS standard, 27 March 2020). Columns count UTF-16 units,
 * as the log declares; addresses are relative to where the check ran, so that they lead to files of the repository.
 */
export function reportSarif(
  diagnostics: readonly Diagnostic[],
  { version, rules, root = '', handbook }: SarifOptions,
): string {
  const context: Context = { rules, prefix: root === '' ? '' : `${root}/`, seen: new Map() };
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
            ...(handbook === undefined ? {} : { informationUri: handbook }),
            rules: rules.map(({ id, finds, documentation, severity }) => ({
              id,
              shortDescription: { text: finds },
              ...(handbook === undefined ? {} : { helpUri: ruleAddress(handbook, id) }),
              help: { text: documentation.trim(), markdown: documentation.trim() },
              defaultConfiguration: { level: severity },
            })),
          },
        },
        columnKind: 'utf16CodeUnits',
        originalUriBaseIds: {
          [baseId]: { description: { text: 'The folder in which the check ran.' } },
        },
        results: diagnostics.map((diagnostic) => makeResult(diagnostic, context)),
      },
    ],
  };
  return writeJson(log);
}

interface Context {
  readonly rules: readonly SarifRule[];
  /** What the path of a file begins with. */
  readonly prefix: string;
  /** How often a finding of these words has come in this file. */
  readonly seen: Map<string, number>;
}

function makeResult(diagnostic: Diagnostic, { rules, prefix, seen }: Context) {
  const { rule, severity, place, message, hint, related, fixes } = diagnostic;
  const words = `${rule}\n${place.file}\n${message}`;
  const count = (seen.get(words) ?? 0) + 1;
  seen.set(words, count);
  return {
    ruleId: rule,
    ruleIndex: rules.findIndex(({ id }) => id === rule),
    level: severity,
    message: { text: hint === undefined ? message : `${message} ${hint}` },
    locations: [makeLocation(place, prefix)],
    // The sentence names the move and not its line, so the finding is known again after edits above; of several
    // that read alike each has its place in their order.
    partialFingerprints: {
      'finding/v1': createHash('sha256')
        .update(count === 1 ? words : `${words}\n${count}`)
        .digest('hex'),
    },
    ...(related.length === 0
      ? {}
      : {
          relatedLocations: related.map(({ place: there, message: text }, id) => ({
            id,
            ...makeLocation(there, prefix),
            message: { text },
          })),
        }),
    ...(fixes === undefined
      ? {}
      : {
          fixes: [
            {
              artifactChanges: fixes.map(({ place: there, text }) => ({
                artifactLocation: fileOf(there, prefix),
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

function fileOf({ file }: Place, prefix: string) {
  return { uri: uriOf(prefix + file), uriBaseId: baseId };
}

function makeLocation(place: Place, prefix: string) {
  return {
    physicalLocation: {
      artifactLocation: fileOf(place, prefix),
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
