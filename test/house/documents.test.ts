import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { installationFrom } from "#lib/installation";

const developers = readFileSync("DEVELOPERS.md", "utf8");
const readme = readFileSync("README.md", "utf8");

describe("the table of security", () => {
  const table = developers.slice(developers.indexOf("## Security"), developers.indexOf("## The record as a file"));
  const rows = [...table.matchAll(/^\| (V\d+) [^|]*\| ([^|]*) \| ([^|]*) \| ([^|]*) \|$/gm)];

  test("has each chapter of the standard once, and says of each how it stands", () => {
    expect(rows.map(([, chapter]) => chapter)).toEqual(Array.from({ length: 17 }, (_, index) => `V${index + 1}`));
    for (const [, chapter, state] of rows) expect(["met", "partly", "not used"], chapter).toContain(state?.trim());
  });

  test("names tests that are there", () => {
    for (const [, chapter, state, , shown = ""] of rows) {
      const files = [...shown.matchAll(/`([^`]+)`/g)].map(([, file]) => file ?? "");
      for (const file of files) expect(existsSync(file), `${chapter}: ${file}`).toBe(true);
      expect(files.length > 0, chapter).toBe(state?.trim() !== "not used");
    }
  });
});

describe("the examples for a server", () => {
  const block = (language: string) => new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``).exec(readme)?.[1] ?? "";
  const examples = `${block("ini")}\n${block("dockerfile")}`;

  test("start what is there, with scripts and variables that are known", () => {
    const commands = [...examples.matchAll(/app\/[\w/.]+\.mjs/g)].map(([file]) => file);
    expect(commands).toHaveLength(2);
    for (const file of commands) expect(existsSync(file), file).toBe(true);
    const { scripts } = JSON.parse(readFileSync("package.json", "utf8"));
    for (const [, script = ""] of examples.matchAll(/npm run ([\w:]+)/g)) expect(scripts).toHaveProperty(script);
    const bounded = scripts.start.replace(" app/", " --max-old-space-size=1024 app/"); // a service among others gets a bound; npm start leaves it to the machine
    expect(examples).toContain(`ExecStart=/usr/bin/${bounded}\n`);
    expect(JSON.parse(/^CMD (.*)$/m.exec(examples)?.[1] ?? "[]").join(" ")).toBe(bounded);
  });

  test("are settings that a server starts with", () => {
    const set = Object.fromEntries(
      [...block("dockerfile").matchAll(/^ENV (.*)$/gm)]
        .flatMap(([, all = ""]) => all.split(" "))
        .map((pair) => pair.split("=") as [string, string]),
    );
    const asked = {
      ...set,
      ...{
        EVENFIELD_ADDRESS: "https://fields.district.example",
        EVENFIELD_SECRET: "an invented secret, 0123456789 abc",
      },
    };
    expect(installationFrom({ ...asked, EVENFIELD_MODE: "shared" })).toMatchObject({
      ...{ ok: true, value: { mode: "shared", listen: { host: "0.0.0.0", port: 3000 } } },
    });
    expect(installationFrom({ ...set }).ok).toBe(false); // nobody signs in, so it does not listen to the world
  });
});
