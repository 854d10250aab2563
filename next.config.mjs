/** Headers that are the same for every answer. The content security policy differs each time: see proxy.ts. */
const steadyHeaders = [
  { key: "X-Content-Type-Options", value: "nosniff" },
  { key: "X-Frame-Options", value: "DENY" },
  { key: "Referrer-Policy", value: "same-origin" },
  { key: "Permissions-Policy", value: "camera=(), geolocation=(), microphone=(), payment=(), usb=()" },
  { key: "Cross-Origin-Opener-Policy", value: "same-origin" },
  { key: "Cross-Origin-Resource-Policy", value: "same-origin" },
];

/** @type {import("next").NextConfig} */
export default {
  serverExternalPackages: ["better-sqlite3", "pg", "docx", "fontkit", "pdfkit"],
  turbopack: { root: import.meta.dirname },
  poweredByHeader: false,
  typescript: { ignoreBuildErrors: true }, // `npm test` checks the types; a first start need not do it again
  headers: async () => [{ source: "/:path*", headers: steadyHeaders }],
  // Browsers ask for this address by themselves where a page has not named its icon yet.
  rewrites: async () => [{ source: "/favicon.ico", destination: "/icon.svg" }],
  // proxy.ts refuses what announces more than its address takes, and what announces nothing; these hold besides. The
  // second is the size of the largest file that is kept (lib/attachment/limits.ts), as it counts for all addresses.
  experimental: { serverActions: { bodySizeLimit: "1mb" }, proxyClientMaxBodySize: "25mb" },
};
