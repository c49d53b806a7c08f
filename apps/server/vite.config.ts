import { readFileSync } from 'node:fs';
import { defineConfig } from 'vite';

/** The registry's packages this server names: they stay outside the bundle, everything of ours goes in. */
const manifest: { dependencies: Record<string, string> } = JSON.parse(
  readFileSync(new URL('./package.json', import.meta.url), 'utf8'),
);
const outside = Object.keys(manifest.dependencies).filter((name) => !name.startsWith('@loopwright/'));

export default defineConfig({
  build: { ssr: 'src/main.ts', outDir: 'dist', emptyOutDir: false, target: 'node20', sourcemap: true },
  ssr: { noExternal: true, external: outside },
});
