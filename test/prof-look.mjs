import { chromium } from "@playwright/test";
const [base, out, ...paths] = process.argv.slice(2);
const b = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"] });
const p = await b.newPage({ viewport: { width: 1280, height: 900 } });
p.on("console", (m) => m.type() === "error" && console.log("ERR", m.text().slice(0, 300)));
p.on("pageerror", (e) => console.log("PAGEERR", e.message.slice(0, 300)));
await p.goto(base + "/"); await p.getByRole("button", { name: "Open the demonstration project" }).click(); await p.waitForURL(/side-by-side$/);
const project = new URL(p.url()).pathname.replace(/\/side-by-side$/, ""); console.log(project);
for (const path of paths) for (const w of [1280, 360]) { await p.setViewportSize({ width: w, height: 900 }); await p.goto(`${base}${project}/${path}`, { waitUntil: "load" }); const name = path.replace(/\W+/g, "-"); await p.screenshot({ path: `${out}/${name}-${w}.png`, fullPage: true }); console.log(name, w, await p.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.scrollHeight])); }
await b.close();
