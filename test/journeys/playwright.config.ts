import { tmpdir } from "node:os";
import { join } from "node:path";
import { defineConfig } from "@playwright/test";
import { sharedAddress, sharedPort, sharedSecret } from "./shared-server";

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
    // following each step takes as long again as the steps; `TRACE=on` does it for a journey that fails
    trace: process.env.TRACE === "on" ? "retain-on-failure" : "off",
    screenshot: "only-on-failure",
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
  webServer: [
    server(address, { PORT: port, EVENFIELD_DATA: dataFolder }),
    // the second one, on which people sign in; see shared.ts
    server(`${sharedAddress}/sign-in`, {
      PORT: String(sharedPort),
      EVENFIELD_DATA: `${dataFolder}-shared`,
      EVENFIELD_MODE: "shared",
      EVENFIELD_ADDRESS: sharedAddress,
      EVENFIELD_SECRET: sharedSecret,
    }),
  ],
});

function server(url: string, env: Readonly<Record<string, string>>) {
  return {
    command: "node app/_commands/start.mjs",
    cwd: "../..",
    url,
    env: { HOST: "127.0.0.1", DATABASE_URL: "", ...env },
    reuseExistingServer: false,
    gracefulShutdown: { signal: "SIGTERM" as const, timeout: 10_000 },
    timeout: 300_000,
    stdout: "pipe" as const,
  };
}
