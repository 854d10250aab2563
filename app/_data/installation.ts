/** How this server is set up; read and checked at its start. */
export type Installed = Readonly<
  | { mode: "local" }
  | {
      mode: "shared";
      address: string;
      secret: string;
      mail: Readonly<{ url: string; from: string }> | null;
      proxies: number;
    }
>;

export function installation(): Installed {
  const { DATABASE_URL, EVENFIELD_MODE, EVENFIELD_ADDRESS = "", EVENFIELD_SECRET = "" } = process.env;
  if (!DATABASE_URL && EVENFIELD_MODE !== "shared") return { mode: "local" };
  return { mode: "shared", address: EVENFIELD_ADDRESS, secret: EVENFIELD_SECRET, mail: null, proxies: 0 };
}
