import { type Dirent, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { reasons } from './reasons.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

/** One direct dependency. Sizes are bytes of files. */
export interface Row {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly why: string;
  /** The size of its own files. */
  readonly size: number;
  /** Packages that only it brings, and their size. */
  readonly brings: number;
  readonly bringsSize: number;
}

/** The direct dependencies, as the lock file and the folder `node_modules` have them. */
export function listDependencies(kind: 'dependencies' | 'devDependencies'): {
  rows: Row[];
  packages: number;
  size: number;
} {
  const { packages } = readJson('package-lock.json') as { packages: Record<string, Locked> };
  const { '': own } = packages as { '': Record<typeof kind, Record<string, string>> };
  const names = Object.keys(own[kind]).sort();
  const reached = names.map((name) => reach(`node_modules/${name}`, packages));
  const rows = names.map((name, index) => {
    const folder = `node_modules/${name}`;
    const others = new Set(reached.flatMap((each, at) => (at === index ? [] : [...each])));
    const only = [...(reached[index] ?? [])].filter((each) => each !== folder && !others.has(each));
    return {
      name,
      version: packages[folder]?.version ?? '',
      licence: licenceOf(folder, packages[folder]),
      why: reasons[name] ?? '',
      size: sizeOf(folder),
      brings: only.length,
      bringsSize: only.reduce((sum, each) => sum + sizeOf(each), 0),
    };
  });
  const all = new Set(reached.flatMap((each) => [...each]));
  const size = [...all].reduce((sum, each) => sum + sizeOf(each), 0);
  return { rows, packages: all.size, size };
}

/** A package and all that it needs, by their folders, of those that are installed on this system. */
function reach(start: string, packages: Record<string, Locked>): Set<string> {
  const found = new Set<string>();
  const open = [start];
  for (let folder = open.pop(); folder !== undefined; folder = open.pop()) {
    if (found.has(folder) || sizeOf(folder) === 0) continue;
    found.add(folder);
    const { dependencies, optionalDependencies } = packages[folder] ?? {};
    for (const name of Object.keys({ ...dependencies, ...optionalDependencies })) {
      const next = resolve(folder, name, packages);
      if (next !== undefined) open.push(next);
    }
  }
  return found;
}

/** Node's way of finding a package: in the nearest `node_modules`. */
function resolve(from: string, name: string, packages: Record<string, Locked>): string | undefined {
  for (let folder = from; ; folder = folder.slice(0, folder.lastIndexOf('/node_modules/'))) {
    const found = `${folder}/node_modules/${name}`;
    if (found in packages) return found;
    if (!folder.includes('/node_modules/')) break;
  }
  return `node_modules/${name}` in packages ? `node_modules/${name}` : undefined;
}

const sizes = new Map<string, number>();

function sizeOf(folder: string): number {
  const known = sizes.get(folder);
  if (known !== undefined) return known;
  const size = sizeOfFiles(join(root, folder));
  sizes.set(folder, size);
  return size;
}

/** Without the packages within it, which are counted by themselves. */
function sizeOfFiles(folder: string): number {
  let size = 0;
  let entries: Dirent[];
  try {
    entries = readdirSync(folder, { withFileTypes: true });
  } catch {
    // A package of another system is not installed.
    return 0;
  }
  for (const entry of entries) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) size += entry.name === 'node_modules' ? 0 : sizeOfFiles(path);
    else if (entry.isFile()) size += statSync(path).size;
  }
  return size;
}

function licenceOf(folder: string, locked: Locked | undefined): string {
  if (locked?.license !== undefined) return locked.license;
  const about = readJson(`${folder}/package.json`) as {
    readonly license?: string;
    readonly licenses?: readonly { readonly type: string }[];
  };
  return about.license ?? about.licenses?.map(({ type }) => type).join(' or ') ?? 'none named';
}

function readJson(file: string): unknown {
  return JSON.parse(readFileSync(join(root, file), 'utf8'));
}
