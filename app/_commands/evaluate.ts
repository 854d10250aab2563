import { readFile } from "node:fs/promises";
import { explainProjectFile, projectFileJsonSchema, readProjectFile } from "#lib/document";
import { evaluate } from "#lib/evaluation";

const usage = `Usage: npm run --silent evaluate -- FILE.json   prints the evaluation of a project file as JSON
       npm run --silent evaluate -- --schema    prints the JSON Schema of a project file`;

/** An open side of a range is infinite, which JSON has no number for: it is written as null. */
const openSideAsNull = (_key: string, value: unknown) =>
  value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY ? null : value;

const print = (value: unknown) => process.stdout.write(`${JSON.stringify(value, openSideAsNull, 2)}\n`);

function refuse(message: string): void {
  process.stderr.write(`${message}\n`);
  process.exitCode = 1;
}

async function evaluateFile(path: string): Promise<void> {
  let text: string;
  try {
    text = await readFile(path, "utf8");
  } catch (problem) {
    return refuse(`The file ${path} can’t be opened: ${problem instanceof Error ? problem.message : problem}`);
  }
  const read = readProjectFile(text);
  if (!read.ok) return refuse(`${path}: ${explainProjectFile(read.problem)}`);
  print(evaluate(read.value.project));
}

const [argument, ...rest] = process.argv.slice(2);
if (argument === undefined || rest.length > 0) refuse(usage);
else if (argument === "--schema") print(projectFileJsonSchema());
else await evaluateFile(argument);
