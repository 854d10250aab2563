import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["test/**/*.test.ts"],
    testTimeout: 60_000, // a slow machine is no fault; speed is measured by the bench
    hookTimeout: 120_000,
    maxWorkers: 2, // on two cores one would be used; the tests of databases and processes wait most of their time
    isolate: false, // the rooms are pure; importing them anew for every file took longer than the tests
    exclude: ["test/journeys/**", "test/faults/**", "test/load/**"],
  },
});
