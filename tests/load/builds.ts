// What the measurements run besides the page itself: bundled first, as both are TypeScript.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import type { BrowserContext } from 'playwright-core';
import { build } from 'vite';

const ROOT = resolve(import.meta.dirname, '../..');
const CACHE = join(ROOT, 'node_modules/.cache');

/** As the page is built for use: a test runner calls itself something else. */
process.env.NODE_ENV = 'production';

/** Bundles a file of this folder for a process of its own; where it is then. */
export async function bundled(name: string): Promise<string> {
  const outDir = join(CACHE, `loopwright-${name}`);
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'error',
    build: { ssr: join(import.meta.dirname, `${name}.ts`), outDir, emptyOutDir: true, target: 'node20' },
    ssr: { noExternal: true },
    resolve: { alias: { ws: createRequire(join(ROOT, 'apps/server/package.json')).resolve('ws') } },
  });
  return join(outDir, `${name}.js`);
}

const FORGETFUL = 'virtual:forgetful-analysis';
const REAL = join(ROOT, 'packages/analysis/src/index.ts');

/** The rival: the same page, whose analysis remembers nothing from one picture to the next. */
export async function forgetfulPage(): Promise<string> {
  const board = join(ROOT, 'apps/board');
  const outDir = join(CACHE, 'loopwright-forgetful-page');
  await build({
    root: board,
    configFile: join(board, 'vite.config.ts'),
    logLevel: 'error',
    build: { outDir, emptyOutDir: true },
    plugins: [
      {
        name: 'forgetful-analysis',
        enforce: 'pre',
        resolveId: (source, importer) =>
          source === '@loopwright/analysis' && importer?.endsWith('open-live-board.ts') ? `\0${FORGETFUL}` : null,
        load: (id) =>
          id === `\0${FORGETFUL}`
            ? `import { openAnalysis as remembering } from '${REAL}';
               export * from '${REAL}';
               export const openAnalysis = () => ({ analyse: (plan, routing) => remembering().analyse(plan, routing) });`
            : null,
      },
    ],
  });
  return outDir;
}

/** Gives a visitor this page in place of the one the server has. */
export async function showPage(context: BrowserContext, directory: string): Promise<void> {
  // A page that did not come over the network asks before it connects to this machine.
  await context.grantPermissions(['local-network-access']);
  await context.route('**/b/*', (route) =>
    route.fulfill({ body: readFileSync(join(directory, 'index.html')), contentType: 'text/html' }),
  );
  await context.route(/\/assets\/.*\.(js|css)$/, (route) => {
    const { pathname } = new URL(route.request().url());
    const contentType = pathname.endsWith('.css') ? 'text/css' : 'text/javascript';
    return route.fulfill({ body: readFileSync(join(directory, pathname)), contentType });
  });
}
