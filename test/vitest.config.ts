import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["test/**/*.test.ts"],
    testTimeout: 60_000, // a slow machine is no fault; speed is measured by the bench
    hookTimeout: 120_000,
    exclude: ["test/journeys/**", "test/faults/**", "test/load/**"],
  },
});
