/** Where and for whom a server runs. */
export type Installation = Readonly<{ listen: Readonly<{ host: string; port: number }> }> &
  (
    | Readonly<{ mode: "local" }>
    | Readonly<{
        /** People sign in. */
        mode: "shared";
        /** Where people reach it: "https://fields.district.example". */
        address: string;
        /** Signs cookies; the same on every instance. */
        secret: string;
        /** Null where no letters are sent. */
        mail: Readonly<{ url: string; from: string }> | null;
        /** How many proxies in front are trusted to say where a request comes from. */
        proxies: number;
      }>
  );

/** What is the matter with one variable of the environment. `read` is empty where it holds a secret. */
export type SettingProblem = Readonly<{ variable: string; read: string; sentence: string }>;
