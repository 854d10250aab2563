import { expect, test } from "vitest";
import { isLoopbackHost } from "#lib/access";

test.each(["localhost", "LOCALHOST:3000", "127.0.0.1", "127.0.0.1:3000", "127.8.9.255", "[::1]", "[::1]:3000", "::1"])(
  "%s is this machine",
  (host) => expect(isLoopbackHost(host)).toBe(true),
);

test.each([
  ...["", "0.0.0.0", "[::]", "::", "192.168.0.7", "10.0.0.1:3000", "128.0.0.1", "127.0.0.256", "127.0.0", "127.1"],
  ...["localhost.example.org", "127.0.0.1.example.org", "notlocalhost", "localhost@example.org", "user@localhost"],
  ...[
    "localhost:",
    "localhost:123456",
    "localhost:80:80",
    "localhost/",
    " localhost",
    "localhost\n",
    "::1:80",
    "[::2]",
  ],
])("“%s” is not this machine", (host) => expect(isLoopbackHost(host)).toBe(false));
