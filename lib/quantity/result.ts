/** The outcome of something that can fail in an expected way. `throw` is kept for bugs. */
export type Result<T, P> = Readonly<{ ok: true; value: T } | { ok: false; problem: P }>;

export const succeeded = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });
export const failed = <P>(problem: P): { readonly ok: false; readonly problem: P } => ({ ok: false, problem });
