import { defineConfig } from 'vitest/config';

const project = (name: string, include: string[], testTimeout = 20_000) => ({
  test: {
    name,
    include,
    testTimeout,
    hookTimeout: 60_000,
    environment: 'node' as const,
    exclude: ['**/node_modules/**', '**/dist/**'],
  },
});

/** One project a kind of test, so that `npm test` can run and count them one after the other. */
export default defineConfig({
  test: {
    projects: [
      project('unit', ['packages/*/src/**/*.test.{ts,tsx}', 'apps/*/src/**/*.test.{ts,tsx}']),
      project('published', ['tests/published/**/*.test.ts']),
      project('golden', ['tests/golden/**/*.test.ts']),
      project('boundaries', ['tests/boundaries/**/*.test.ts']),
      project('convergence', ['tests/convergence/**/*.test.ts'], 600_000),
      project('faults', ['tests/faults/**/*.test.ts'], 600_000),
      project('load', ['tests/load/**/*.measure.ts'], 180_000),
      project('browser', ['tests/browser/**/*.test.ts'], 180_000),
    ],
  },
});
