import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: new URL("../..", import.meta.url).pathname,
    include: ["test/faults/**/*.test.ts"],
    fileParallelism: false,
    globalSetup: ["test/faults/run-total.ts"],
  },
});
