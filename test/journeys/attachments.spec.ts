import { createHash } from "node:crypto";
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { jpeg, pdf, png } from "../attachment/small-files";
import { hostileAttachments, hostileNames } from "../faults/hostile-attachments";
import { demonstration, expect, test } from "./fixtures";

let project = "";

test.beforeEach(async ({ browser }) => {
  project = await demonstration(browser);
});

const file = (name: string, bytes: Uint8Array) => ({
  ...{ name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) },
});

const row = (page: Page, name: string) => page.getByRole("row").filter({ has: page.getByRole("rowheader", { name }) });

/** Sends bytes as the page does, with headers of one's own. */
const send = (page: Page, bytes: Uint8Array, name: string, headers: Readonly<Record<string, string>> = {}) =>
  page.request.post(`${project}/attachments/upload`, {
    data: Buffer.from(bytes),
    headers: {
      "content-type": "application/octet-stream",
      "sec-fetch-site": "same-origin",
      "x-file-name": encodeURIComponent(name.replace(/\p{Cs}/gu, "")),
      ...headers,
    },
  });

test("a report that claims name is added once and opens at the page that each of them names", async ({ page }) => {
  await page.goto(`${project}/attachments`);
  await page
    .getByLabel("Bid A: Laboratory report, named 7 times", { exact: true })
    .setInputFiles(file("scan 0017.pdf", pdf({ pages: 6 })));
  await expect(page.getByText("“scan 0017.pdf”: Kept.")).toBeVisible();
  await expect(row(page, "Laboratory report")).toContainText("Bid A");
  await expect(row(page, "Laboratory report")).toContainText("scan 0017.pdf");
  await expect(page.getByLabel(/^Bid A: Laboratory report/)).toHaveCount(0);
  const hash = createHash("sha256")
    .update(pdf({ pages: 6 }))
    .digest("hex");
  await expect(row(page, "Laboratory report").getByText(`SHA-256 ${hash.slice(0, 12)}…`)).toBeVisible();

  await page.goto(`${project}/bids/bid-a`);
  const opens = page.getByRole("link", { name: "Open the document" }).first();
  expect(await opens.getAttribute("href")).toMatch(/\/view#page=\d+$/);
  expect(await opens.getAttribute("target")).toBe("_blank");
  const shown = await page.request.get((await opens.getAttribute("href")) ?? "");
  expect(
    createHash("sha256")
      .update(await shown.body())
      .digest("hex"),
  ).toBe(hash);

  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.goto(`${project}/attachments`).then(() => row(page, "Laboratory report").getByText("Save").click()),
  ]);
  expect(download.suggestedFilename()).toBe("scan 0017.pdf");
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk);
  expect(createHash("sha256").update(Buffer.concat(chunks)).digest("hex")).toBe(hash);
});

test("what a document is called is changed, and it is removed and brought back", async ({ page }) => {
  await page.goto(`${project}/attachments`);
  await page
    .getByLabel("Add files", { exact: true })
    .setInputFiles([file("field.jpg", jpeg()), file("drawing.png", png())]);
  await expect(page.getByText("“drawing.png”: Kept.")).toBeVisible();
  await page.getByRole("link", { name: "drawing.png", exact: true }).click();
  await page.getByLabel("What the document is called").fill("Drawing of the field");
  await expect(page.locator('[data-saving="saved"]')).toBeVisible();
  await page.getByRole("link", { name: "Attachments", exact: true }).first().click();
  await page.getByRole("button", { name: "Remove Drawing of the field" }).click();
  await expect(row(page, "Drawing of the field")).toBeHidden();
  await page.getByRole("button", { name: "Bring the attachment back" }).click();
  await expect(row(page, "Drawing of the field")).toBeVisible();
  await expect(row(page, "field.jpg")).toBeVisible();
});

test("a file is handed out so that a browser runs nothing of it", async ({ page, context }) => {
  await page.goto(`${project}/attachments`);
  for (const [name, bytes, type] of [
    ["report.pdf", pdf(), "application/pdf"],
    ["field.jpg", jpeg(), "image/jpeg"],
  ] as const) {
    const sent: unknown = await (await send(page, bytes, name)).json();
    expect(sent).toMatchObject({ kind: "kept", name });
    const { id } = sent as { id: string };
    for (const how of ["file", "view"] as const) {
      const answer = await page.request.get(`${project}/attachments/${id}/${how}`);
      expect(answer.headers()).toMatchObject({
        "content-type": type,
        "x-content-type-options": "nosniff",
        "x-frame-options": "DENY",
        "cross-origin-resource-policy": "same-origin",
        "cache-control": "no-store",
        "content-security-policy":
          "sandbox; default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
        "content-disposition": `${how === "file" ? "attachment" : "inline"}; filename="${name}"; filename*=UTF-8''${name}`,
      });
      expect(Buffer.compare(await answer.body(), Buffer.from(bytes))).toBe(0);
    }
    if (type !== "image/jpeg") continue; // a Chromium without a window shows no PDF
    // the sandbox takes the origin away, so nothing in the file could reach the app
    const viewer = await context.newPage();
    await viewer.goto(`${project}/attachments/${id}/view`);
    expect(await viewer.evaluate(() => origin).catch(() => "no script")).not.toContain("127");
    await viewer.close();
  }
  expect((await page.request.get(`${project}/attachments/nowhere/file`)).status()).toBe(404);
});

test("every hostile file is refused with its reason and leaves nothing behind", async ({ page, complaints }) => {
  for (const { what, file: bytes, says } of hostileAttachments) {
    const answer = await send(page, bytes, "report.pdf");
    if (bytes.length > 25 * 1024 * 1024) {
      expect(answer.status(), what).toBe(413);
      continue;
    }
    expect(answer.status(), what).toBe(422);
    const { problem } = (await answer.json()) as { problem: string };
    expect(problem, what).toMatch(says);
  }
  await page.goto(`${project}/attachments`);
  await expect(page.getByText("No file is kept yet.")).toBeVisible();
  await page
    .getByLabel("Add files", { exact: true })
    .setInputFiles(file("report.pdf", pdf({ catalogue: "/OpenAction << /S /JavaScript /JS (app.alert\\(1\\)) >>" })));
  await expect(
    page.getByText(
      "“report.pdf”: The PDF holds a script, which a reading program might run. Print it into a new PDF, which leaves that behind, and add the new one.",
    ),
  ).toBeVisible();
  const expected = "422 (Unprocessable Entity)"; // the browser's own line on the answer that refuses
  complaints.splice(0, complaints.length, ...complaints.filter((line) => !line.includes(expected)));
});

test("a file of 100 MB is refused by the page and, unread, by the server", async ({ page, baseURL }) => {
  const folder = mkdtempSync(join(tmpdir(), "evenfield-large-"));
  const large = join(folder, "large.pdf");
  writeFileSync(large, pdf());
  truncateSync(large, 100 * 1024 * 1024);
  await page.goto(`${project}/attachments`);
  await page.getByLabel("Add files", { exact: true }).setInputFiles(large);
  await expect(page.getByText("“large.pdf”: The file has 100 MB; up to 25 MB are kept.")).toBeVisible();
  rmSync(folder, { recursive: true });

  const { host } = new URL(baseURL ?? "");
  const began = performance.now();
  const answer = await send(page, new Uint8Array(100 * 1024 * 1024), "large.pdf", { origin: `http://${host}` }).catch(
    (problem: unknown) => String(problem),
  );
  // the server answers before it has read, and may close while the rest is on its way
  if (typeof answer === "string") expect(answer).toMatch(/EPIPE|ECONNRESET|socket hang up/);
  else expect(answer.status()).toBe(413);
  expect(performance.now() - began).toBeLessThan(60_000);
  const elsewhere = await page.request.post(`${project}/attachments`, {
    data: Buffer.alloc(2 * 1024 * 1024),
    headers: { "sec-fetch-site": "same-origin" },
  });
  expect(elsewhere.status(), "only the address that takes files takes more than 1 MB").toBe(413);
});

test("every hostile name is kept as a harmless one", async ({ page }) => {
  const names = hostileNames.filter(({ what }) => what !== "half a letter"); // no header can carry one
  for (const { what, sent, kept } of names) {
    const answer = (await (await send(page, pdf(), sent)).json()) as { id: string; name: string };
    expect(answer.name, what).toBe(kept);
    const { headers } = await page.request
      .get(`${project}/attachments/${answer.id}/file`)
      .then((got) => ({ headers: got.headers() }));
    expect(headers["content-disposition"], what).toContain(`filename="${kept}"`);
    expect(headers["set-cookie"], what).toBeUndefined();
  }
  await page.goto(`${project}/attachments`);
  await page.getByLabel("Add files", { exact: true }).setInputFiles(file("report\u202efdp.exe", pdf()));
  await expect(page.getByText("Kept as “reportfdp.exe.pdf”.")).toBeVisible();
});

test("a file sent from another site is refused", async ({ page }) => {
  const answer = await send(page, pdf(), "report.pdf", { "sec-fetch-site": "cross-site" });
  expect(answer.status()).toBe(403);
});

test("a project that comes as a file awaits its papers and takes them by their hash", async ({ page }) => {
  await send(page, pdf({ pages: 2 }), "report 14.pdf");
  const exported = await (await page.request.get(`${project}/export`)).body();
  await page.goto("/");
  await page.getByLabel("Project file", { exact: true }).setInputFiles({
    ...{ name: "copy.json", mimeType: "application/json", buffer: exported },
  });
  await page.getByRole("button", { name: "Open the file" }).click();
  await page.waitForURL(/\/project\/[^/]+$/);
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Attachments" }).click();
  await expect(row(page, "report 14.pdf")).toContainText("The file is not here yet: add it above.");
  await page.getByLabel("Add files", { exact: true }).setInputFiles(file("renamed meanwhile.pdf", pdf({ pages: 2 })));
  await expect(page.getByText("Kept: it is the file that an attachment was waiting for.")).toBeVisible();
  await expect(row(page, "report 14.pdf").getByRole("link", { name: "Open" })).toBeVisible();
  await expect(row(page, "renamed meanwhile.pdf")).toBeHidden();
});
