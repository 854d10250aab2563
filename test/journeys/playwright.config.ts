import { tmpdir } from "node:os";
import { join } from "node:path";
import { defineConfig } from "@playwright/test";

// test/run.mjs chooses these; the fallbacks serve a single journey run by hand after `npm run build`.
const port = process.env.EVENFIELD_JOURNEYS_PORT ?? "3987";
const dataFolder = process.env.EVENFIELD_JOURNEYS_DATA ?? join(tmpdir(), "evenfield-journeys-data");
const chromium = process.env.EVENFIELD_CHROMIUM;
const address = `http://127.0.0.1:${port}`;

export default defineConfig({
  testDir: ".",
  testMatch: "*.spec.ts",
  outputDir: "../../test-results",
  reporter: [["list"], ["json"]],
  forbidOnly: Boolean(process.env.CI),
  workers: 2,
  timeout: 180_000,
  expect: { timeout: 30_000 },
  use: {
    baseURL: address,
    locale: "en-US",
    trace: "retain-on-failure",
    launchOptions: {
      ...(chromium ? { executablePath: chromium } : {}),
      args: [
        "--no-sandbox",
        "--disable-dev-shm-usage",
        "--disable-gpu",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
      ],
    },
  },
  webServer: {
    command: "node app/_commands/start.mjs",
    cwd: "../..",
    url: address,
    env: { PORT: port, HOST: "127.0.0.1", EVENFIELD_DATA: dataFolder, DATABASE_URL: "" },
    reuseExistingServer: false,
    gracefulShutdown: { signal: "SIGTERM", timeout: 10_000 },
    timeout: 300_000,
    stdout: "pipe",
  },
});
