import { connect, createServer, type Socket } from "node:net";

/** What happens to the connections that go through. */
export type Fault =
  /** Everything is cut at once. */
  | "cut"
  /** The next commit of a change reaches the server; the answer never comes back. */
  | "answer-lost"
  /** The next commit of a change never reaches the server. */
  | "commit-lost"
  /** Nothing goes through any more, either way, and nothing is closed. */
  | "silence";

/** Stands between an application and PostgreSQL, on a port of its own. */
export type DatabaseProxy = Readonly<{
  port: number;
  /** Resolves once the fault has struck. */
  strike: (fault: Fault) => Promise<void>;
  /** After silence: cuts what hangs and lets new connections through. */
  heal: () => void;
  stop: () => void;
}>;

/** A simple query as the protocol has it: its letter, its length, its text and a zero. */
const message = (text: string): Buffer => {
  const held = Buffer.from(`Q0000${text}\0`);
  held.writeUInt32BE(held.length - 1, 1);
  return held;
};
const commit = message("commit");
const startOfChange = message("start transaction isolation level read committed");

export function startProxy(serverPort: number): Promise<DatabaseProxy> {
  const pairs = new Set<Readonly<{ client: Socket; server: Socket }>>();
  let isSilent = false;
  let armed: Readonly<{ fault: "answer-lost" | "commit-lost"; struck: () => void }> | null = null;

  const cutAll = () => {
    for (const { client, server } of pairs) {
      client.destroy();
      server.destroy();
    }
    pairs.clear();
  };

  const listener = createServer((client) => {
    const server = connect(serverPort, "127.0.0.1");
    const pair = { client, server };
    pairs.add(pair);
    let isChange = false;
    let isDeaf = false;
    const end = () => {
      pairs.delete(pair);
      client.destroy();
      server.destroy();
    };
    for (const socket of [client, server]) {
      socket.setNoDelay(true);
      socket.on("error", () => undefined); // what is cut ends with an error
      socket.on("close", () => {
        if (!isSilent) end();
      });
    }
    client.on("data", (chunk) => {
      if (isSilent) return;
      if (chunk.includes(startOfChange)) isChange = true;
      if (!armed || !isChange || !chunk.includes(commit)) {
        server.write(chunk);
        return;
      }
      const { fault, struck } = armed;
      armed = null;
      isDeaf = true;
      if (fault === "commit-lost") {
        end();
        struck();
        return;
      }
      // the server has answered once its first bytes are here
      server.once("data", () => {
        end();
        struck();
      });
      server.write(chunk);
    });
    server.on("data", (chunk) => {
      if (!isSilent && !isDeaf) client.write(chunk);
    });
  });

  return new Promise((resolve, reject) => {
    listener.once("error", reject);
    listener.listen(0, "127.0.0.1", () => {
      const address = listener.address();
      resolve({
        port: typeof address === "object" && address ? address.port : 0,
        strike(fault) {
          if (fault === "cut") cutAll();
          if (fault === "silence") isSilent = true;
          if (fault === "cut" || fault === "silence") return Promise.resolve();
          return new Promise((struck) => {
            armed = { fault, struck };
          });
        },
        heal() {
          isSilent = false;
          cutAll();
        },
        stop() {
          cutAll();
          listener.close();
        },
      });
    });
  });
}
