import {
  type Diagnostic as ClientDiagnostic,
  DiagnosticSeverity,
  type Location,
} from 'vscode-languageserver-protocol';
import { type Diagnostic, type Place, ruleAddress } from '../diagnostics/index.ts';
import { blockAt, type Course, firstSign, type NodeRef } from '../model/index.ts';
import type { Desk } from './desk.ts';
import type { Session } from './session.ts';

export function locationOf(place: Place, desk: Desk, { places }: Session): Location {
  const text = desk.text(place.file);
  return { uri: text.uri, range: places.toRange(text, place.start.offset, place.end.offset) };
}

/** A finding as an editor shows it: what is wrong, and in a second line what to do. */
export function toClient(diagnostic: Diagnostic, desk: Desk, session: Session): ClientDiagnostic {
  const { rule, severity, place, message, hint, related } = diagnostic;
  const takes = session.capabilities.textDocument?.publishDiagnostics;
  const { handbook } = session.host;
  return {
    range: locationOf(place, desk, session).range,
    severity: severity === 'error' ? DiagnosticSeverity.Error : DiagnosticSeverity.Warning,
    source: 'linewright',
    code: rule,
    ...(handbook !== undefined && takes?.codeDescriptionSupport === true
      ? { codeDescription: { href: ruleAddress(handbook, rule) } }
      : {}),
    message: hint === undefined ? message : `${message}\n${hint}`,
    ...(takes?.relatedInformation === true && related.length > 0
      ? {
          relatedInformation: related.map((one) => ({
            location: locationOf(one.place, desk, session),
            message: one.message,
          })),
        }
      : {}),
  };
}

/** Where a position of the course is written: its move; of a start position the first sign of its block. */
export function placeOfRef(ref: NodeRef, course: Course): Place | undefined {
  const block = blockAt(course, ref);
  return block && (block.nodes[ref.node]?.written?.place ?? firstSign(block.place));
}
