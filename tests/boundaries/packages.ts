import { filesMatching, homeOf } from './source-files.ts';

/** One package or app, as its package.json says. */
export interface Package {
  /** '@loopwright/model'. */
  readonly name: string;
  /** 'packages/model'. */
  readonly home: string;
  /** Import name → file from the top: '@loopwright/document/client' → 'packages/document/src/client/index.ts'. */
  readonly entries: ReadonlyMap<string, string>;
  readonly dependencies: ReadonlySet<string>;
}

interface Manifest {
  readonly name: string;
  readonly exports?: Readonly<Record<string, string>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

export const PACKAGES: readonly Package[] = filesMatching(/^(packages|apps)\/[^/]+\/package\.json$/).map(
  ({ path, text }) => {
    const manifest: Manifest = JSON.parse(text);
    const home = homeOf(path);
    return {
      name: manifest.name,
      home,
      entries: new Map(
        Object.entries(manifest.exports ?? {}).map(([entry, file]) => [
          `${manifest.name}${entry.slice(1)}`,
          `${home}/${file.slice(2)}`,
        ]),
      ),
      dependencies: new Set(Object.keys({ ...manifest.dependencies, ...manifest.devDependencies })),
    };
  },
);
