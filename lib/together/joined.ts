import { type Entries, entriesOf, inOrder } from "./entries";
import { areOfOneKind, type Branch, isBranch, isSame, own } from "./same";

/** A text as it stood when two people began, and what each made of it. */
export type Three = Readonly<{ base: unknown; mine: unknown; theirs: unknown }>;

export type Side = "mine" | "theirs";

/**
 * A place at which the two differ. `path` holds the keys, entries of a list by their id; the order of a list stands under
 * "order". Undefined stands for what is not there.
 */
export type Change = Three & Readonly<{ path: readonly string[]; by: Side | "both" }>;

/** Whoever changed it has it; where both did, this side's stands until somebody chooses. */
const whoChanged = ({ by }: Change): Side => (by === "theirs" ? "theirs" : "mine");

/**
 * Both texts in one, field by field. Entries of lists go by their ids; a list whose entries have none, and an object that
 * became one of another kind, are taken whole.
 */
export const joined = (three: Three, choose: (change: Change) => Side = whoChanged): unknown =>
  joinedAt([], three, choose);

/** Every place at which the two differ, in the order of the text. */
export function changes(three: Three): readonly Change[] {
  const found: Change[] = [];
  joined(three, (change) => {
    found.push(change);
    return whoChanged(change);
  });
  return found;
}

/** The places that both changed, and not in the same way. */
export const clashes = (three: Three): readonly Change[] => changes(three).filter(({ by }) => by === "both");

type Choose = (change: Change) => Side;
type Path = readonly string[];

function joinedAt(path: Path, three: Three, choose: Choose): unknown {
  const { base, mine, theirs } = three;
  if (isSame(mine, theirs)) return mine;
  if (isBranch(mine) && isBranch(theirs)) {
    const stood = isBranch(base) ? base : null;
    if (areOfOneKind(mine, theirs, ...(stood === null ? [] : [stood])))
      return joinedFields(path, { base: stood ?? {}, mine, theirs }, choose);
  }
  if (Array.isArray(mine) || Array.isArray(theirs)) {
    const [first, one, other] = [entriesOf(base), entriesOf(mine), entriesOf(theirs)];
    if (first !== null && one !== null && other !== null)
      return joinedEntries(path, { base: first, mine: one, theirs: other }, choose);
  }
  return three[choose({ path, ...three, by: byWhom(three) })];
}

function byWhom({ base, mine, theirs }: Three): Change["by"] {
  if (isSame(theirs, base)) return "mine";
  return isSame(mine, base) ? "theirs" : "both";
}

type Of<T> = Readonly<{ base: T; mine: T; theirs: T }>;

function joinedFields(path: Path, { base, mine, theirs }: Of<Branch>, choose: Choose): Branch {
  const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])];
  const fields = keys.map((key) => {
    const three = { base: own(base, key), mine: own(mine, key), theirs: own(theirs, key) };
    return [key, joinedAt([...path, key], three, choose)] as const;
  });
  return Object.fromEntries(fields.filter(([, value]) => value !== undefined));
}

function joinedEntries(path: Path, { base, mine, theirs }: Of<Entries>, choose: Choose): readonly unknown[] {
  const order = joinedOrder(path, { base, mine, theirs }, choose);
  return order.flatMap((id) => {
    const three = { base: base.get(id), mine: mine.get(id), theirs: theirs.get(id) };
    const entry = joinedAt([...path, id], three, choose);
    return entry === undefined ? [] : [entry];
  });
}

function joinedOrder(path: Path, lists: Of<Entries>, choose: Choose): readonly string[] {
  const [base, mine, theirs] = [lists.base, lists.mine, lists.theirs].map((list) => [...list.keys()]) as [
    string[],
    string[],
    string[],
  ];
  const ofBoth = {
    mine: mine.filter((id) => lists.theirs.has(id)),
    theirs: theirs.filter((id) => lists.mine.has(id)),
  };
  if (isSame(ofBoth.mine, ofBoth.theirs)) return inOrder(mine, theirs);
  const ofAll = {
    base: base.filter((id) => lists.mine.has(id) && lists.theirs.has(id)),
    mine: ofBoth.mine.filter((id) => lists.base.has(id)),
    theirs: ofBoth.theirs.filter((id) => lists.base.has(id)),
  };
  const change = { path: [...path, "order"], base: ofAll.base, ...ofBoth, by: byWhom(ofAll) };
  return choose(change) === "mine" ? inOrder(mine, theirs) : inOrder(theirs, mine);
}
