import {
  type Diagnostic,
  makeDiagnostic,
  type Place,
  sortDiagnostics,
} from '../../diagnostics/index.ts';
import type { Allowance } from '../allowances.ts';
import { allowUnused, describeUnused } from '../rules/allow-unused.ts';
import { rules } from '../rules.ts';
import type { ShelfScope, ShelvedCourse } from './shelf-scope.ts';

/** The ids of the rules that look at several courses. */
export const rulesOfShelf: ReadonlySet<string> = new Set(
  rules.flatMap(({ id, inShelf }) => (inShelf ? [id] : [])),
);

/**
 * What only the whole shelf shows, as its courses and their authors' exceptions have it. An exception covers what
 * stands on its line, be that the finding or the other place that it names.
 */
export function reportShelf(shelf: ShelfScope): Diagnostic[] {
  const used = new Set<Allowance>();
  const allowances = shelf.courses.flatMap(({ folder, entry }) =>
    entry.allowances.map((allowance) => ({ allowance, place: inFolder(allowance.place, folder) })),
  );
  const told: Diagnostic[] = [];
  for (const rule of rules) {
    for (const finding of rule.inShelf?.(shelf) ?? []) {
      const course = courseOf(shelf, finding.place);
      const level = rule.always ? undefined : course?.entry.levels[rule.id];
      if (level === 'off') continue;
      const lines = [finding.place, ...(finding.related ?? []).map(({ place }) => place)].map(
        lineOf,
      );
      const covering = rule.always
        ? []
        : allowances.filter(
            ({ allowance, place }) => allowance.rule === rule.id && lines.includes(lineOf(place)),
          );
      for (const { allowance } of covering) used.add(allowance);
      if (covering.length === 0) told.push(makeDiagnostic(rule, level ?? rule.severity, finding));
    }
  }
  const unused = allowances.filter(({ allowance }) => !used.has(allowance));
  return sortDiagnostics([
    ...told,
    ...unused.map(({ allowance: { rule }, place }) =>
      makeDiagnostic(
        allowUnused,
        allowUnused.severity,
        describeUnused({ rule, place, rulePlace: place }, rules),
      ),
    ),
  ]);
}

/** A finding of a course, with paths as seen from its shelf. */
export function inShelf(diagnostic: Diagnostic, folder: string): Diagnostic {
  const { place, related, fixes } = diagnostic;
  return {
    ...diagnostic,
    place: inFolder(place, folder),
    related: related.map((other) => ({ ...other, place: inFolder(other.place, folder) })),
    ...(fixes && { fixes: fixes.map((fix) => ({ ...fix, place: inFolder(fix.place, folder) })) }),
  };
}

function inFolder(place: Place, folder: string): Place {
  return { ...place, file: `${folder}/${place.file}` };
}

function courseOf({ courses }: ShelfScope, { file }: Place): ShelvedCourse | undefined {
  return courses.find(({ folder }) => file.startsWith(`${folder}/`));
}

function lineOf({ file, start }: Place): string {
  return `${start.line} ${file}`;
}
