import { attachmentLimits } from "./limits";

/** What of a PDF a reading program would run or open by itself. */
export type ActiveContent = "script" | "launch" | "embedded-file" | "media" | "form-script" | "data-sender";

/** Why a file is not kept. */
export type AttachmentProblem = Readonly<
  | { kind: "empty" }
  | { kind: "too-large"; bytes: number }
  | { kind: "unknown-kind"; looksLike: string | null }
  | { kind: "not-whole"; what: "pdf" | "png" | "jpeg" }
  | { kind: "more-behind"; bytes: number }
  | { kind: "too-many-pixels"; width: number; height: number }
  | { kind: "locked" }
  | { kind: "active"; content: ActiveContent }
  | { kind: "not-looked-into" }
>;

const activeWords: Readonly<Record<ActiveContent, string>> = {
  script: "a script",
  launch: "an order to start a program",
  "embedded-file": "another file inside it",
  media: "film, sound or a moving model",
  "form-script": "a form that programs itself (XFA)",
  "data-sender": "a form that sends or fetches data",
};

const wholeNames = { pdf: "PDF", png: "PNG picture", jpeg: "JPEG picture" } as const;

const megabytes = (bytes: number): string => (bytes / 1024 / 1024).toFixed(bytes < 10 * 1024 * 1024 ? 1 : 0);

const printAnew = "Print it into a new PDF, which leaves that behind, and add the new one.";

/** Says what was found in the file and what to do. */
export function explainAttachment(problem: AttachmentProblem): string {
  switch (problem.kind) {
    case "empty":
      return "The file is empty. Expected a PDF, a PNG or a JPEG picture.";
    case "too-large":
      return `The file has ${megabytes(problem.bytes)} MB; up to ${megabytes(attachmentLimits.fileBytes)} MB are kept. Split it, or scan it at a lower resolution.`;
    case "unknown-kind":
      return problem.looksLike === null
        ? "The file is no PDF and no PNG or JPEG picture, by what it holds. Its name does not count. Save it as one of these."
        : `By what it holds, the file is ${problem.looksLike}. Kept are PDF files and PNG or JPEG pictures. Save it as one of these.`;
    case "not-whole":
      return `The file begins as a ${wholeNames[problem.what]} and does not go on or end as one. It may have been cut off on the way: get it again.`;
    case "more-behind":
      return `Behind the end of the picture ${problem.bytes.toLocaleString("en-US")} bytes more follow that belong to none. Save the picture anew.`;
    case "too-many-pixels":
      return `The picture has ${problem.width.toLocaleString("en-US")} × ${problem.height.toLocaleString("en-US")} pixels, more than a browser can show. Save it smaller.`;
    case "locked":
      return `The PDF is locked, so nobody can look into it. ${printAnew.replace("which leaves that behind", "which takes the lock off")}`;
    case "active":
      return `The PDF holds ${activeWords[problem.content]}, which a reading program might run. ${printAnew}`;
    case "not-looked-into":
      return `Part of the PDF is packed in a way that is not looked into here, so nobody can say what it holds. ${printAnew}`;
  }
}
