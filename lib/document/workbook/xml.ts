import { SaxesParser } from "saxes";
import { limits } from "./limits";
import type { WorkbookProblem } from "./problem";

export type Attributes = Readonly<Record<string, string>>;

/** What stands in an XML part, in order. Names are without prefix. A sentence given back ends the reading. */
export type XmlReader = Readonly<{
  open?: (name: string, attributes: Attributes) => WorkbookProblem | null;
  text?: (text: string) => void;
  close?: (name: string) => WorkbookProblem | null;
}>;

const stride = 65_536; // characters handed over at a time, so that a problem ends the reading soon

const withoutPrefix = (name: string): string => name.slice(name.indexOf(":") + 1);

/**
 * Reads an XML part strictly: well-formed UTF-8 without a document type, so that no entity can grow. Content of
 * `extLst`, where programs keep additions of their own, is passed over.
 * @source Extensible Markup Language 1.0; ECMA-376 part 1, 18.2.10
 */
export function readXml(part: string, bytes: Uint8Array, reader: XmlReader): WorkbookProblem | null {
  const text = decoded(bytes);
  const broken: WorkbookProblem = { kind: "damaged", what: `its part “${part}” is not well-formed text` };
  if (text === null) return broken;
  const parser = new SaxesParser({ position: false });
  let problem: WorkbookProblem | null = null;
  let depth = 0;
  let foreignFrom = Number.POSITIVE_INFINITY; // depth at which a passed-over element opened
  parser.on("error", () => {
    problem ??= broken;
  });
  parser.on("doctype", () => {
    problem ??= { kind: "declares-entities", part };
  });
  parser.on("xmldecl", ({ encoding }) => {
    if (encoding !== undefined && !/^(utf-8|us-ascii)$/i.test(encoding)) problem ??= broken;
  });
  parser.on("opentag", ({ name, attributes }) => {
    depth += 1;
    if (depth > limits.nesting) problem ??= broken;
    const local = withoutPrefix(name);
    if (local === "extLst" && depth < foreignFrom) foreignFrom = depth;
    if (problem === null && depth < foreignFrom) problem = reader.open?.(local, attributes as Attributes) ?? null;
  });
  const readText = (read: string) => {
    if (problem === null && depth < foreignFrom) reader.text?.(read);
  };
  parser.on("text", readText);
  parser.on("cdata", readText);
  parser.on("closetag", ({ name }) => {
    if (problem === null && depth < foreignFrom) problem = reader.close?.(withoutPrefix(name)) ?? null;
    if (depth === foreignFrom) foreignFrom = Number.POSITIVE_INFINITY;
    depth -= 1;
  });
  for (let at = 0; at < text.length && problem === null; at += stride) parser.write(text.slice(at, at + stride));
  if (problem === null) parser.close();
  return problem;
}

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null; // bytes that are no UTF-8
  }
}
