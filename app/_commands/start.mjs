// Starts Evenfield: looks at its settings, builds it where the build is missing or older than the sources, prepares the
// store, then serves it. Plain JavaScript, so that Node needs nothing else.
// `npm start` serves the build; "dev" compiles pages as they are asked for; "build" only builds.
// @ts-check
import { spawn } from "node:child_process";
import { createServer } from "node:http";
import { fileURLToPath } from "node:url";
import { buildIsCurrent, recordBuild } from "./build-record.mjs";

const projectFolder = fileURLToPath(new URL("../..", import.meta.url));
const task = process.argv[2] ?? "start";
const dev = task === "dev";
process.chdir(projectFolder);
process.env.NEXT_TELEMETRY_DISABLED = "1";
// Next reads it while loading, so it has to be set before the import below.
Object.assign(process.env, { NODE_ENV: dev ? "development" : "production" });

/** A reason not to start that the person at the keyboard can do something about. */
class NotStarted extends Error {}

/** @type {import("node:child_process").ChildProcess | undefined} the part at work: build or store preparation */
let running;

/**
 * Runs another part of Evenfield with this same Node and waits for it to end.
 * @param {string} what
 * @param {readonly string[]} args
 * @returns {Promise<void>}
 */
function run(what, args) {
  return new Promise((resolve, reject) => {
    running = spawn(process.execPath, args, { stdio: ["ignore", "inherit", "inherit"] });
    running.on("error", reject);
    running.on("exit", (code, signal) => {
      running = undefined;
      if (code === 0) resolve();
      else reject(new NotStarted(`${what} ended with ${signal ?? `code ${code}`}. Its own message stands above.`));
    });
  });
}

/**
 * Where to listen, once the settings are looked at; all that is the matter with them is told at once.
 * @returns {Promise<{ host: string, port: number, address?: string }>}
 */
function checkedSettings() {
  return new Promise((resolve, reject) => {
    const args = ["--import", "tsx", "app/_commands/check-settings.ts"];
    const checking = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "inherit"] });
    let told = "";
    checking.stdout.on("data", (part) => {
      told += part;
    });
    checking.on("error", reject);
    checking.on("exit", (code) => {
      if (code === 0) resolve(JSON.parse(told));
      else reject(new NotStarted("What is the matter with its settings stands above."));
    });
  });
}

/** Builds the pages where that is needed. */
async function build() {
  if (buildIsCurrent(projectFolder)) return;
  console.log("Building the pages. This takes a minute the first time and after every update.");
  await run("The build", ["node_modules/next/dist/bin/next", "build"]);
  recordBuild(projectFolder);
}

/**
 * @param {import("node:http").Server} server
 * @param {string} host
 * @param {number} port
 * @returns {Promise<void>}
 */
function listen(server, host, port) {
  return new Promise((resolve, reject) => {
    server.once("error", (/** @type {NodeJS.ErrnoException} */ problem) => {
      if (problem.code === "EADDRINUSE")
        reject(
          new NotStarted(
            `Port ${port} is taken by another program. Stop that one, or choose another: PORT=${port + 1} npm start.`,
          ),
        );
      else if (problem.code === "EACCES")
        reject(new NotStarted(`This account may not use port ${port}. Choose one above 1023: PORT=3000 npm start.`));
      else reject(problem);
    });
    server.listen(port, host, () => resolve());
  });
}

/** Until the pages are ready, whoever asks is told so.
 * @type {import("node:http").RequestListener} */
function notReady(_request, response) {
  response.writeHead(503, { "content-type": "text/plain; charset=utf-8", "retry-after": "5" });
  response.end("Evenfield is starting. Try again in a few seconds.\n");
}

/**
 * Ends requests under way, then the process; a second signal does not wait.
 * @param {import("node:http").Server} server
 * @param {() => Promise<void>} closePages
 */
function stopOnSignal(server, closePages) {
  let stopping = false;
  const stop = async () => {
    running?.kill("SIGTERM");
    if (stopping) process.exit(1);
    stopping = true;
    setTimeout(() => server.closeAllConnections(), 20_000).unref();
    setTimeout(() => process.exit(1), 25_000).unref(); // something under way did not end
    const closed = new Promise((resolve) => server.close(resolve));
    server.closeIdleConnections();
    await closed;
    await closePages();
    process.exit(0);
  };
  process.on("SIGINT", stop);
  process.on("SIGTERM", stop);
  if (process.env.npm_lifecycle_event === undefined) return;
  // npm puts a shell between itself and us that ends without passing a signal on; then its end is the signal.
  const startedBy = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === startedBy) return;
    clearInterval(watch);
    stop();
  }, 500);
  watch.unref();
}

async function start() {
  const { host, port, address } = await checkedSettings();
  /** @type {import("node:http").RequestListener} */
  let handle = notReady;
  /** @type {ReturnType<typeof import("next").default> | undefined} */
  let pages;
  const server = createServer((request, response) => handle(request, response));
  // The port is taken before the build, so that a port in use shows at once.
  await listen(server, host, port);
  stopOnSignal(server, async () => pages?.close());

  if (!dev) await build();
  await run("Preparing the store", ["--import", "tsx", "app/_commands/migrate.ts"]);

  // Where an action leads on, Next asks itself for the next page. Without this it would take the address from what a
  // request says of the proxy before it, ask by TLS where there is none, and leave the browser to load the page anew.
  process.env.__NEXT_PRIVATE_ORIGIN = `http://${loopbackOf(host)}:${port}`;
  const { default: next } = await import("next");
  pages = next({ dev, dir: projectFolder, hostname: host, port, httpServer: server });
  await pages.prepare();
  handle = pages.getRequestHandler();
  // where people sign in, what the console is asked to print goes through the log by now
  process.stdout.write(
    `Evenfield is ready at ${address ?? `http://${loopbackOf(host)}:${port}`}  (stop it with Ctrl+C)\n`,
  );
}

/**
 * An address under which this server reaches itself.
 * @param {string} host where it listens
 */
function loopbackOf(host) {
  if (host === "0.0.0.0") return "127.0.0.1";
  if (host === "::") return "[::1]";
  return host.includes(":") ? `[${host}]` : host;
}

(task === "build" ? build() : start()).catch((problem) => {
  console.error(problem instanceof NotStarted ? `Evenfield did not start. ${problem.message}` : problem);
  process.exit(1);
});
