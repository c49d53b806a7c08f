import { createHash } from 'node:crypto';
import { join, resolve } from 'node:path';
import { build, type Plugin } from 'vite';

/** Letters of the page's own scripts: few people read it in these, and they are fetched when somebody does. */
const SELDOM = /(cyrillic|greek|vietnamese)/;

/**
 * Builds the worker that keeps the page offline, after the page: it has to know the page's files by name.
 *
 * A file with a hash in its name is its own revision; the page itself is known by what it says.
 */
export function pageKeptOffline(root: string): Plugin {
  let files: readonly { readonly url: string; readonly revision: string | null }[] = [];
  let outDir = '';
  return {
    name: 'page-kept-offline',
    apply: 'build',
    configResolved(config) {
      outDir = resolve(root, config.build.outDir);
    },
    writeBundle(_options, bundle) {
      const assets = Object.keys(bundle).filter((name) => name.startsWith('assets/') && !SELDOM.test(name));
      const page = bundle['index.html'];
      const said = page?.type === 'asset' ? page.source : '';
      const revision = createHash('sha256').update(said).digest('hex').slice(0, 16);
      files = [{ url: '/', revision }, ...assets.map((name) => ({ url: `/${name}`, revision: null }))];
    },
    async closeBundle() {
      await build({
        root,
        configFile: false,
        logLevel: 'warn',
        publicDir: false,
        define: { PAGE_FILES: JSON.stringify(files), 'process.env.NODE_ENV': '"production"' },
        build: {
          outDir,
          emptyOutDir: false,
          target: 'es2023',
          rollupOptions: {
            input: join(root, 'src/offline/service-worker/worker.ts'),
            output: { format: 'iife', entryFileNames: 'service-worker.js' },
          },
        },
      });
    },
  };
}
