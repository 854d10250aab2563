import { oncePerName } from "./once";

type Answers = Readonly<Record<string, () => unknown>>;

/** Hands out an object made elsewhere, so that a class can give it a private field. */
class Given {
  constructor(object: object) {
    // biome-ignore lint/correctness/noConstructorReturn: what it is for
    return object;
  }
}

/** An object that knows how its properties are worked out, and keeps those that were. */
class Asked extends Given {
  readonly #answers: Answers;
  #kept: Record<string, unknown> | null = null;

  constructor(object: object, answers: Answers) {
    super(object);
    this.#answers = answers;
  }

  static read(object: Asked, name: string): unknown {
    object.#kept ??= {};
    if (!Object.hasOwn(object.#kept, name)) object.#kept[name] = object.#answers[name]?.();
    return object.#kept[name];
  }
}

/** The property of one name, the same for all objects, so that the engine gives them one shape. */
const propertyNamed = oncePerName((name: string): PropertyDescriptor & ThisType<Asked> => ({
  enumerable: true,
  configurable: true,
  get() {
    return Asked.read(this, name);
  },
}));

/**
 * The very object that is handed in, with more properties, each worked out when somebody first reads it, and kept. To
 * whoever reads, compares, spreads or writes it as JSON it is plain data. `get` in a literal would do the same at some
 * eight times the price: it gives every object a shape of its own, which holds on to it when it is no longer needed.
 */
export function workedOutOnReading<Held extends object, Later extends Answers>(
  object: Held,
  answers: Later,
): Held & { readonly [Name in keyof Later]: ReturnType<Later[Name]> } {
  new Asked(object, answers);
  for (const name of Object.keys(answers)) Object.defineProperty(object, name, propertyNamed(name));
  return object as Held & { readonly [Name in keyof Later]: ReturnType<Later[Name]> };
}
