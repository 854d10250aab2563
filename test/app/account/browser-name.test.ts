import { expect, test } from "vitest";
import { browserName } from "../../../app/account/_browser-name";

// user agents as browsers send them; common practice, no source
test.each([
  [
    "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0 Safari/537.36 Edg/140.0",
    "Edge on Windows",
  ],
  [
    "Mozilla/5.0 (Linux; Android 15) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0 Mobile Safari/537.36",
    "Chrome on Android",
  ],
  [
    "Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Mobile/15E148 Safari/604.1",
    "Safari on iPhone",
  ],
  ["Mozilla/5.0 (Macintosh; Intel Mac OS X 14.6; rv:130.0) Gecko/20100101 Firefox/130.0", "Firefox on macOS"],
  ["curl/8.0", "Unknown browser"],
  ["", "Unknown browser"],
])("%s", (agent, name) => expect(browserName(agent)).toBe(name));
