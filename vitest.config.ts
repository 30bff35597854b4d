import { defineConfig } from 'vitest/config';

const REPORT = 'node_modules/.vitest/report.json';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 30_000,
    hookTimeout: 30_000,
    // Continuous integration counts from the report what the run has just printed.
    reporters: process.env.CI ? ['dot', ['json', { outputFile: REPORT }]] : ['default'],
  },
});
