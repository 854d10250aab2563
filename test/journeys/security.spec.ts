import { request as nodeRequest } from "node:http";
import { expect, test } from "./fixtures";

type Sent = Readonly<{
  method?: string;
  path?: string;
  headers?: Readonly<Record<string, string>>;
  body?: string | undefined;
}>;

/** Sends exactly these headers, the Host included, which browsers and fetch would set themselves. */
function send(address: string, { method = "GET", path = "/", headers = {}, body }: Sent) {
  const { hostname, port } = new URL(address);
  return new Promise<Readonly<{ status: number; text: string; headers: NodeJS.Dict<string | string[]> }>>(
    (done, failed) => {
      // Without this Node would send the body of a DELETE with no length at all, which no server can read.
      const length =
        body === undefined || "transfer-encoding" in headers ? {} : { "content-length": String(body.length) };
      const sending = nodeRequest({ hostname, port, method, path, headers: { ...length, ...headers } }, (answer) => {
        let text = "";
        answer.setEncoding("utf8");
        answer.on("data", (chunk: string) => {
          text += chunk;
        });
        answer.on("end", () => done({ status: answer.statusCode ?? 0, text, headers: answer.headers }));
        answer.on("error", failed);
      });
      sending.on("error", failed);
      sending.end(body);
    },
  );
}

/** The base address that the configuration gives; there always is one. */
function given(address: string | undefined): string {
  if (address === undefined) throw new Error("The configuration gives no base address.");
  return address;
}

const nonceOf = (policy: string | undefined) => /script-src [^;]*'nonce-([^']+)'/.exec(policy ?? "")?.[1];

test.describe("the content security policy", () => {
  for (const path of ["/", "/no-such-page"]) {
    test(`lets ${path} run its own scripts and styles without a complaint`, async ({ page, complaints }) => {
      const answer = await page.goto(path);
      await page.waitForLoadState("networkidle");
      await expect(page.getByRole("heading").first()).toBeVisible();
      // The browser logs that a page was not found; every other line would be a complaint.
      if (answer?.status() === 404)
        complaints.splice(0, complaints.length, ...complaints.filter((line) => !line.includes("404")));
      expect(complaints).toEqual([]);
    });
  }

  test("refuses an inline script, an event attribute and a style attribute that are written into a page", async ({
    page,
    complaints,
  }) => {
    await page.route("/", async (route) => {
      const answer = await route.fetch();
      const slipped = `<p id="slipped" style="color: rgb(1, 2, 3)">slipped in</p>
        <script>globalThis.ran = "script"</script><img src="data:," onerror="globalThis.ran = 'attribute'">`;
      await route.fulfill({ response: answer, body: (await answer.text()).replace("</body>", `${slipped}</body>`) });
    });
    await page.goto("/");
    await expect(page.locator("#slipped")).toBeAttached();
    await expect(page.locator("#slipped")).not.toHaveCSS("color", "rgb(1, 2, 3)");
    expect(await page.evaluate(() => "ran" in globalThis)).toBe(false);
    const refusals = complaints.splice(0);
    expect(refusals.filter((line) => line.includes("Content Security Policy")).length).toBeGreaterThanOrEqual(3);
  });

  test("has a nonce that no other answer has", async ({ request }) => {
    const nonces = [];
    for (let asked = 0; asked < 5; asked += 1) {
      const answer = await request.get("/");
      const nonce = nonceOf(answer.headers()["content-security-policy"]);
      expect(await answer.text()).toContain(`nonce="${nonce}"`);
      nonces.push(nonce);
    }
    expect(nonces.every((nonce) => nonce && Buffer.from(nonce, "base64").length >= 16)).toBe(true);
    expect(new Set(nonces).size).toBe(5);
  });

  test("allows no inline script, no plug-in, no frame and no foreign form", async ({ request }) => {
    const policy = (await request.get("/")).headers()["content-security-policy"] ?? "";
    expect(policy).not.toContain("unsafe");
    for (const rule of [
      "default-src 'self'",
      "'strict-dynamic'",
      "script-src-attr 'none'",
      "style-src-attr 'none'",
      "object-src 'none'",
      "base-uri 'none'",
      "form-action 'self'",
      "frame-ancestors 'none'",
    ])
      expect(policy).toContain(rule);
  });
});

test("every answer carries the steady headers, refusals and files included", async ({ baseURL, page }) => {
  await page.goto("/");
  const script = await page.locator("script[src]").first().getAttribute("src");
  const asked: readonly Sent[] = [
    {},
    { path: "/no-such-page" },
    { path: script ?? "" },
    { headers: { host: "field.example" } },
  ];
  for (const sent of asked) {
    const { headers } = await send(given(baseURL), sent);
    expect(headers).toMatchObject({
      "x-content-type-options": "nosniff",
      "x-frame-options": "DENY",
      "referrer-policy": "same-origin",
      "cross-origin-opener-policy": "same-origin",
      "cross-origin-resource-policy": "same-origin",
    });
    expect(headers["permissions-policy"]).toContain("camera=()");
    expect(headers["x-powered-by"]).toBeUndefined();
  }
});

test("a name that only resolves to this machine is refused, for pages and files alike", async ({ baseURL }) => {
  const { port } = new URL(given(baseURL));
  for (const host of ["field.example", `field.example:${port}`, `127.0.0.1.field.example:${port}`, "192.0.2.7"]) {
    for (const path of ["/", "/_next/static/none.js"]) {
      const answer = await send(given(baseURL), { path, headers: { host } });
      expect(answer.status).toBe(421);
      expect(answer.text).toBe(
        "Evenfield answers under this machine's own address only, such as http://127.0.0.1:3000.\n",
      );
    }
  }
  for (const host of [`127.0.0.1:${port}`, `localhost:${port}`]) {
    expect((await send(given(baseURL), { headers: { host } })).status).toBe(200);
  }
});

test("a change sent from another site is refused", async ({ baseURL }) => {
  const { host } = new URL(given(baseURL));
  const foreign: readonly Readonly<Record<string, string>>[] = [
    { origin: "http://field.example" },
    { origin: "null" },
    { origin: "http://127.0.0.1:1" },
    { origin: `http://${host}`, "sec-fetch-site": "cross-site" },
    { "sec-fetch-site": "same-site" },
    {},
  ];
  for (const method of ["POST", "PUT", "DELETE"]) {
    for (const headers of foreign) {
      const answer = await send(given(baseURL), { method, headers, body: "a=1" });
      expect(answer.status, `${method} ${JSON.stringify(headers)}`).toBe(403);
      expect(answer.text).toBe(
        "This change was sent from another site, so nothing was changed. Send it from Evenfield's own page.\n",
      );
    }
  }
  const own = await send(given(baseURL), { method: "POST", headers: { origin: `http://${host}` }, body: "a=1" });
  expect(own.status).not.toBe(403);
});

test("what is too large, or does not say how large it is, is refused", async ({ baseURL }) => {
  const { host } = new URL(given(baseURL));
  const own = { origin: `http://${host}`, "content-type": "application/octet-stream" };
  const large = await send(given(baseURL), {
    method: "POST",
    headers: own,
    body: "x".repeat(1024 * 1024 + 1),
  });
  expect(large.status).toBe(413);
  expect(large.text).toBe("What was sent is larger than 1 MB, so it was not read. Send a smaller file.\n");
  const unannounced = await send(given(baseURL), {
    method: "POST",
    headers: { ...own, "transfer-encoding": "chunked" },
    body: "x",
  });
  expect(unannounced.status).toBe(411);
  expect(unannounced.text).toBe(
    "The length of what was sent was not announced. Send it with a Content-Length header.\n",
  );
});
