/** @type {import("next").NextConfig} */
export default {
  serverExternalPackages: ["better-sqlite3", "pg"],
  turbopack: { root: import.meta.dirname },
  poweredByHeader: false,
  experimental: { serverActions: { bodySizeLimit: "1mb" } },
};
