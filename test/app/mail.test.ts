import { createServer, type Server } from "node:net";
import { afterEach, describe, expect, test } from "vitest";
import { type LogEvent, type LogFacts, logLine } from "#lib/log";
import { handOver } from "../../app/_data/mail";

type Taken = { from: string; to: string; letter: string };

/** A mail server that speaks the least of SMTP (RFC 5321) and keeps what it is handed, or refuses whom the letter is for. */
async function mailServer(options: Readonly<{ refuses?: true }> = {}) {
  const taken: Taken[] = [];
  const server: Server = createServer((socket) => {
    const said: Taken = { from: "", to: "", letter: "" };
    let isLetter = false;
    let buffer = "";
    const say = (line: string) => socket.write(`${line}\r\n`);
    const hear = (line: string) => {
      if (isLetter && line !== ".") said.letter += `${line.replace(/^\./, "")}\n`;
      else if (isLetter) {
        isLetter = false;
        taken.push(said);
        say("250 kept");
      } else if (/^(EHLO|HELO)/i.test(line)) say("250 mail.harrowvale.example");
      else if (/^MAIL FROM:/i.test(line)) {
        said.from = line.slice(10);
        say("250 ok");
      } else if (/^RCPT TO:/i.test(line)) {
        said.to = line.slice(8);
        say(options.refuses ? "550 no such mailbox eve@harrowvale.example" : "250 ok");
      } else if (/^DATA/i.test(line)) {
        isLetter = true;
        say("354 go on");
      } else if (/^QUIT/i.test(line)) {
        say("221 bye");
        socket.end();
      } else say("250 ok");
    };
    socket.on("error", () => socket.destroy());
    say("220 mail.harrowvale.example");
    socket.on("data", (data) => {
      buffer += String(data);
      const lines = buffer.split("\r\n");
      buffer = lines.pop() ?? "";
      for (const line of lines) hear(line);
    });
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const address = server.address();
  const port = typeof address === "object" && address !== null ? address.port : 0;
  return { taken, server, by: { url: `smtp://127.0.0.1:${port}`, from: "fields@harrowvale.example" } };
}

const letter = {
  to: "eve@harrowvale.example",
  subject: "An invitation to Evenfield",
  text: "Eve,\n\nchoose a password here:\n\nhttps://fields.harrowvale.example/come-in/a-token-that-lets-in\n.\n",
};

describe("a letter", () => {
  const servers: Server[] = [];
  afterEach(() => {
    for (const server of servers.splice(0)) server.close();
  });
  const started = async (options?: Parameters<typeof mailServer>[0]) => {
    const made = await mailServer(options);
    servers.push(made.server);
    return made;
  };

  test("is handed over by SMTP: to whom, from whom, and its link whole", async () => {
    const { taken, by } = await started();
    expect(await handOver(by, letter)).toBe(true);
    expect(taken).toHaveLength(1);
    expect(taken[0]?.from).toContain("<fields@harrowvale.example>");
    expect(taken[0]?.to).toContain("<eve@harrowvale.example>");
    expect(taken[0]?.letter).toMatch(/^Subject: An invitation to Evenfield$/m);
    expect(taken[0]?.letter).toContain("https://fields.harrowvale.example/come-in/a-token-that-lets-in");
  });

  test("that is not taken is answered so, and neither address nor link is logged", async () => {
    const told: string[] = [];
    const tell = (event: LogEvent, facts: LogFacts = {}) =>
      void told.push(JSON.stringify(facts), logLine("2026-11-26T10:00:00.000Z", event, facts));
    const { by, taken } = await started({ refuses: true });
    expect(await handOver(by, letter, tell)).toBe(false);
    expect(taken).toEqual([]);
    const { by: closed, server } = await started();
    await new Promise((done) => server.close(done));
    expect(await handOver(closed, letter, tell)).toBe(false);
    expect(told.join("")).not.toMatch(/eve@|harrowvale|come-in|a-token/);
    expect(told.filter((line) => line.includes("letter-not-sent"))).toHaveLength(2);
  });

  test("brings no lines of its own into the head of the letter", async () => {
    const { taken, by } = await started();
    const told = { ...letter, subject: "An invitation\r\nBcc: everybody@harrowvale.example" };
    expect(await handOver(by, told)).toBe(true);
    expect(taken[0]?.to).not.toContain("everybody");
    expect(taken[0]?.letter).not.toMatch(/^Bcc:/im);
  });
});
