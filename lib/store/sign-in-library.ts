import { betterAuth } from "better-auth";
import type { Kysely } from "kysely";
import { passwordLength } from "#lib/password";
import type { Location } from "./database";
import { randomId } from "./id";
import type { Tables } from "./tables";

/** What sign-in needs to know of an installation. */
export type SignInSettings = Readonly<{
  /** Signs the cookies; at least 32 characters, the same on every instance. */
  secret: string;
  /** Where people reach Evenfield: "https://fields.district.example". */
  address: string;
}>;

const day = 24 * 3600;

/** Who has done nothing for so long signs in again. In seconds. */
const idleLimit = 3 * day;

/** A sign-in ends after so long however busy somebody is. In seconds. */
export const signInLimit = 30 * day;

/** A time as the library writes it: a text in SQLite, a date in PostgreSQL. */
export const libraryTime = (kind: Location["kind"], at: string): string | Date =>
  kind === "postgres" ? new Date(at) : at;

/**
 * The library that keeps passwords (scrypt), sessions and their signed cookies, on tables of ours under names of ours. Its
 * own web addresses are not served: whatever it does is asked of it here, so nobody can sign up or reach what is not used.
 */
export const signInLibrary = (db: Kysely<Tables>, kind: Location["kind"], { secret, address }: SignInSettings) =>
  betterAuth({
    database: { db, type: kind },
    secret,
    baseURL: address,
    appName: "Evenfield",
    telemetry: { enabled: false },
    logger: { disabled: true }, // it writes addresses of mail
    emailAndPassword: {
      enabled: true,
      minPasswordLength: passwordLength.least,
      maxPasswordLength: passwordLength.most * 4, // it counts UTF-16 code units
      autoSignIn: true,
    },
    session: {
      modelName: "sign_in",
      expiresIn: idleLimit,
      updateAge: 3600,
      fields: {
        ...{ expiresAt: "expires_at", createdAt: "created_at", updatedAt: "updated_at" },
        ...{ ipAddress: "ip_address", userAgent: "user_agent", userId: "person_id" },
      },
    },
    user: {
      modelName: "person",
      fields: { emailVerified: "email_verified", createdAt: "created_at", updatedAt: "updated_at" },
    },
    account: {
      modelName: "credential",
      fields: {
        ...{ accountId: "account_id", providerId: "provider_id", userId: "person_id" },
        ...{ accessToken: "access_token", refreshToken: "refresh_token", idToken: "id_token" },
        ...{ accessTokenExpiresAt: "access_token_expires_at", refreshTokenExpiresAt: "refresh_token_expires_at" },
        ...{ createdAt: "created_at", updatedAt: "updated_at" },
      },
    },
    verification: {
      modelName: "one_time_value",
      fields: { expiresAt: "expires_at", createdAt: "created_at", updatedAt: "updated_at" },
    },
    advanced: {
      cookiePrefix: "evenfield",
      useSecureCookies: address.startsWith("https:"),
      database: { generateId: () => randomId() },
      ipAddress: { disableIpTracking: true }, // nobody needs to know from where somebody signed in
    },
  });

export type SignInLibrary = ReturnType<typeof signInLibrary>;
