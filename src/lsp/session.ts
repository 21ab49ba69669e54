import type {
  ClientCapabilities,
  Diagnostic as ClientDiagnostic,
  PublishDiagnosticsParams,
} from 'vscode-languageserver-protocol';
import { courseFolderOf, pathInCourse, pathOf } from './addresses.ts';
import { Desk, type Host } from './desk.ts';
import { createPlaces, type Encoding, type OpenText, openText, type Places } from './open-text.ts';
import { toClient } from './to-client.ts';

/**
 * In milliseconds: the check waits at least and at most this long after a change, and otherwise as long as the last
 * check took, so that it does not hold up an author who types on.
 */
const pause = { least: 60, most: 400 };

export interface Client {
  readonly publish: (found: PublishDiagnosticsParams) => void;
  readonly log: (text: string, isFault?: boolean) => void;
}

/** All that a client has open, the courses that it stands in, and what was found in them. */
export class Session {
  readonly capabilities: ClientCapabilities;
  readonly places: Places;
  readonly host: Host;
  private readonly client: Client;
  /** Texts by their address, and by their path. */
  private readonly byUri = new Map<string, OpenText>();
  private readonly byPath = new Map<string, OpenText>();
  private readonly desks = new Map<string, Desk>();
  /** What was published, by the desk: the addresses that have findings. */
  private readonly published = new Map<Desk, ReadonlySet<string>>();
  private readonly timers = new Map<Desk, NodeJS.Timeout>();
  private readonly strangers = new Set<string>();

  constructor(
    host: Host,
    client: Client,
    { capabilities, encoding }: { capabilities: ClientCapabilities; encoding: Encoding },
  ) {
    this.host = host;
    this.client = client;
    this.capabilities = capabilities;
    this.places = createPlaces(encoding);
  }

  text(uri: string): OpenText | undefined {
    return this.byUri.get(uri);
  }

  open(uri: string, version: number, text: string): void {
    this.set(openText(uri, version, text));
    this.follow(uri, { anew: true });
  }

  /** Changes to a text; to one that is not open there are none. */
  change(uri: string, version: number, changes: Parameters<Places['change']>[2]): void {
    const before = this.byUri.get(uri);
    if (!before) return;
    this.set(this.places.change(before, version, changes));
    this.follow(uri);
  }

  close(uri: string): void {
    this.byUri.delete(uri);
    const file = pathOf(uri);
    if (file !== undefined) this.byPath.delete(file);
    this.follow(uri, { anew: true });
  }

  changedOnDisk(uris: readonly string[]): void {
    const folders = new Set<string>();
    for (const uri of uris) {
      const file = pathOf(uri);
      if (file === undefined) continue;
      const folder = courseFolderOf(file);
      if (folder !== undefined) folders.add(folder);
      for (const known of this.desks.keys()) {
        if (!pathInCourse(known, file).startsWith('..')) folders.add(known);
      }
    }
    for (const folder of folders) this.refresh(this.deskOf(folder));
  }

  openCourse(folder: string): void {
    this.refresh(this.deskOf(folder));
  }

  /** The course that a text stands in and its path there; undefined for one of no course. */
  at(uri: string): { readonly desk: Desk; readonly file: string } | undefined {
    const full = pathOf(uri);
    const folder = full === undefined ? undefined : courseFolderOf(full);
    if (full === undefined || folder === undefined) {
      if (!this.strangers.has(uri)) {
        this.strangers.add(uri);
        this.client.log(
          `${full ?? uri} stands in no course: there is no course.yaml above it. It is left alone.`,
        );
      }
      return undefined;
    }
    return { desk: this.deskOf(folder), file: pathInCourse(folder, full) };
  }

  end(): void {
    for (const timer of this.timers.values()) clearTimeout(timer);
  }

  private set(text: OpenText): void {
    this.byUri.set(text.uri, text);
    const file = pathOf(text.uri);
    if (file !== undefined) this.byPath.set(file, text);
  }

  private deskOf(folder: string): Desk {
    const known = this.desks.get(folder);
    if (known) return known;
    const desk = new Desk(folder, this.host, this.byPath);
    this.desks.set(folder, desk);
    return desk;
  }

  private follow(uri: string, { anew = false } = {}): void {
    const place = this.at(uri);
    if (!place) return;
    place.desk.touch();
    if (anew) this.refresh(place.desk);
    else this.soon(place.desk);
  }

  private refresh(desk: Desk): void {
    desk.refresh().then(
      () => this.soon(desk),
      (error: unknown) => this.client.log(explain(error), true),
    );
  }

  /** Checks the course again after a short pause in typing. */
  private soon(desk: Desk): void {
    clearTimeout(this.timers.get(desk));
    const timer = setTimeout(
      () => {
        desk
          .ready()
          .then(() => this.tell(desk))
          .catch((error: unknown) => {
            this.client.log(explain(error), true);
          });
      },
      Math.min(pause.most, Math.max(pause.least, desk.cost)),
    );
    this.timers.set(desk, timer);
  }

  /** Publishes what is found in a course; files that have nothing more are cleared. */
  private tell(desk: Desk): void {
    clearTimeout(this.timers.get(desk));
    const found = new Map<string, { text: OpenText; list: ClientDiagnostic[] }>();
    // A text without findings gets an empty list, with its version.
    for (const text of this.byUri.values()) {
      if (this.at(text.uri)?.desk === desk) found.set(text.uri, { text, list: [] });
    }
    for (const diagnostic of desk.diagnostics()) {
      const text = desk.text(diagnostic.place.file);
      const there = found.get(text.uri) ?? { text, list: [] };
      found.set(text.uri, there);
      there.list.push(toClient(diagnostic, desk, this));
    }
    for (const uri of this.published.get(desk) ?? []) {
      if (!found.has(uri)) this.client.publish({ uri, diagnostics: [] });
    }
    for (const [uri, { text, list }] of found) {
      this.client.publish({
        uri,
        ...(text.version === null ? {} : { version: text.version }),
        diagnostics: list,
      });
    }
    const standing = [...found].filter(([, { list }]) => list.length > 0);
    this.published.set(desk, new Set(standing.map(([uri]) => uri)));
    // Ready for the next request.
    setImmediate(() => desk.last()?.course());
  }
}

/** What went wrong, with its stack: a fault of ours is not hidden. */
export function explain(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
