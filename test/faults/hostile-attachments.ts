import { zlibSync } from "fflate";
import { bytesOf, joined, jpeg, objectStream, pdf, png } from "../attachment/small-files";

/** A file as somebody with bad intent, or a broken program, could send it, and what its refusal says. */
export type HostileAttachment = Readonly<{ what: string; file: Uint8Array; says: RegExp }>;

const script = "<< /S /JavaScript /JS (app.alert\\(1\\)) >>";
const holds = (what: string) =>
  new RegExp(`^The PDF holds ${what}, which a reading program might run\\. Print it into`);

/** Packed so that 16 MB of blanks take up 16 kB. */
const bomb = (): string => {
  const packed = String.fromCharCode(...zlibSync(bytesOf(`50 0 ${" ".repeat(16 * 1024 * 1024)}`)));
  return `<< /Type /ObjStm /N 1 /First 5 /Filter /FlateDecode /Length ${packed.length} >>\nstream\n${packed}\nendstream`;
};

export const hostileAttachments: readonly HostileAttachment[] = [
  { what: "an empty file", file: new Uint8Array(0), says: /^The file is empty\. Expected a PDF, a PNG or a JPEG/ },
  {
    what: "a page of the web under the name of a PDF",
    file: bytesOf("<!doctype html><script>alert(1)</script>"),
    says: /^By what it holds, the file is a page of the web, SVG or other XML\./,
  },
  {
    what: "an SVG with a script",
    file: bytesOf('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'),
    says: /a page of the web, SVG or other XML\. Kept are PDF files and PNG or JPEG pictures\./,
  },
  { what: "a program for Windows", file: bytesOf(`MZ${"\0".repeat(99)}`), says: /the file is a program for Windows\./ },
  {
    what: "a program for Linux",
    file: bytesOf(`\x7fELF${"\0".repeat(99)}`),
    says: /the file is a program for Linux\./,
  },
  { what: "a shell script", file: bytesOf("#!/bin/sh\nrm -r ~\n"), says: /the file is a script\./ },
  { what: "a ZIP archive", file: bytesOf("PK\x03\x04\x14\0"), says: /a ZIP archive or an Office document/ },
  {
    what: "a picture that a telephone keeps as HEIC",
    file: bytesOf("\0\0\0\x18ftypheic\0\0\0\0"),
    says: /an HEIC picture or a film/,
  },
  { what: "bytes of nothing in particular", file: new Uint8Array(999), says: /^The file is no PDF and no PNG or JPEG/ },
  {
    what: "a script in front of a PDF",
    file: joined(bytesOf("#!/bin/sh\n"), pdf()),
    says: /the file is a script\./,
  },
  {
    what: "a PDF that was cut off",
    file: pdf().slice(0, 300),
    says: /^The file begins as a PDF and does not go on or end/,
  },
  {
    what: "a PDF with a script that runs on opening",
    file: pdf({ catalogue: `/OpenAction ${script}` }),
    says: holds("a script"),
  },
  {
    what: "a PDF with a script whose name is written in hexadecimal",
    file: pdf({ catalogue: "/OpenAction << /S /Java#53cript /JS (1) >>" }),
    says: holds("a script"),
  },
  {
    what: "a PDF with a script in its packed objects",
    file: pdf({ objects: [objectStream([script])] }),
    says: holds("a script"),
  },
  {
    what: "a PDF with a script in its list of names",
    file: pdf({ catalogue: "/Names << /JavaScript 20 0 R >>", objects: [`<< /Names [(a) ${script}] >>`] }),
    says: holds("a script"),
  },
  {
    what: "a PDF with a rendition, which may carry a script",
    file: pdf({ catalogue: "/OpenAction << /S /Rendition /OP 0 /JS (1) >>" }),
    says: holds("a script"),
  },
  {
    what: "a PDF that starts a program",
    file: pdf({ catalogue: "/OpenAction << /S /Launch /F (cmd.exe) >>" }),
    says: holds("an order to start a program"),
  },
  {
    what: "a PDF with another file inside",
    file: pdf({
      catalogue: "/Names << /EmbeddedFiles << /Names [(a.exe) 20 0 R] >> >>",
      objects: ["<< /Type /Filespec >>"],
    }),
    says: holds("another file inside it"),
  },
  {
    what: "a PDF with another file pinned to a page",
    file: pdf({ objects: ["<< /Type /Annot /Subtype /FileAttachment >>"] }),
    says: holds("another file inside it"),
  },
  {
    what: "a PDF with another file in its packed objects",
    file: pdf({ objects: [objectStream(["<< /Type /EmbeddedFile >>"])] }),
    says: holds("another file inside it"),
  },
  {
    what: "a PDF with a film",
    file: pdf({ objects: ["<< /Subtype /RichMedia >>"] }),
    says: holds("film, sound or a moving model"),
  },
  {
    what: "a PDF with a form that programs itself",
    file: pdf({ catalogue: "/AcroForm << /XFA 20 0 R >>" }),
    says: /\(XFA\)/,
  },
  {
    what: "a PDF with a form that sends data",
    file: pdf({ objects: ["<< /S /SubmitForm /F (http://field.example) >>"] }),
    says: holds("a form that sends or fetches data"),
  },
  {
    what: "a locked PDF",
    file: pdf({ trailer: "/Encrypt 20 0 R", objects: ["<< /Filter /Standard >>"] }),
    says: /^The PDF is locked/,
  },
  {
    what: "a PDF whose packed objects are packed twice over",
    file: pdf({
      objects: [
        objectStream([script], (text) => text.replace("/FlateDecode", "[/ASCIIHexDecode /FlateDecode]")).replace(
          /stream\n.*\nendstream$/s,
          "stream\n789c\nendstream",
        ),
      ],
    }),
    says: /^Part of the PDF is packed in a way that is not looked into here/,
  },
  {
    what: "a PDF that says elsewhere which stream holds objects",
    file: pdf({
      objects: ["/ObjStm", objectStream([script], (text) => text.replace("/Type /ObjStm", "/Type 20 0 R"))],
    }),
    says: /^Part of the PDF is packed in a way/,
  },
  {
    what: "a PDF whose packed objects are cut off",
    file: pdf({ objects: [objectStream([script]).replace(/.{9}\nendstream$/s, "\nendstream")] }),
    says: /^Part of the PDF is packed in a way/,
  },
  {
    what: "a PDF that unpacks to more than a machine holds",
    file: pdf({ objects: Array.from({ length: 3 }, bomb) }),
    says: /^Part of the PDF is packed in a way/,
  },
  { what: "a PNG that was cut off", file: png().slice(0, 50), says: /^The file begins as a PNG picture/ },
  { what: "a PNG of no size", file: png(0, 5), says: /^The file begins as a PNG picture/ },
  {
    what: "a PNG with a page of the web behind it",
    file: joined(png(), bytesOf("<script>alert(1)</script>")),
    says: /^Behind the end of the picture 25 bytes more follow that belong to none\./,
  },
  {
    what: "a PNG that unpacks to gigabytes",
    file: png(60_000, 60_000),
    says: /60,000 × 60,000 pixels, more than a browser/,
  },
  { what: "a JPEG that was cut off", file: jpeg().slice(0, -2), says: /^The file begins as a JPEG picture/ },
  {
    what: "a JPEG without a picture",
    file: Uint8Array.from([0xff, 0xd8, 0xff, 0xd9]),
    says: /^The file begins as a JPEG/,
  },
  { what: "a JPEG that unpacks to gigabytes", file: jpeg(60_000, 60_000), says: /60,000 × 60,000 pixels/ },
  {
    what: "a PDF of more than 25 MB",
    file: joined(pdf(), new Uint8Array(25 * 1024 * 1024)),
    says: /^The file has 25 MB; up to 25 MB are kept\./,
  },
];

/** File names as they could be sent, and what they are kept as where the file is a PDF. */
export const hostileNames: readonly Readonly<{ what: string; sent: string; kept: string }>[] = [
  { what: "a path", sent: "../../etc/passwd", kept: "passwd.pdf" },
  { what: "a path of Windows", sent: "C:\\Users\\me\\..\\report.pdf", kept: "report.pdf" },
  { what: "no name but a path", sent: "a/..", kept: "file.pdf" },
  { what: "a turned direction of writing", sent: "report\u202efdp.exe", kept: "reportfdp.exe.pdf" },
  { what: "isolates that turn it", sent: "\u2066exe\u2069.report.pdf", kept: "exe.report.pdf" },
  { what: "invisible letters", sent: "re\u200bport\ufeff.pdf", kept: "report.pdf" },
  {
    what: "an end of line, which would start another header",
    sent: "a\r\nSet-Cookie: b=c.pdf",
    kept: "a Set-Cookie- b=c.pdf",
  },
  { what: "a NUL", sent: "report.pdf\0.exe", kept: "report.pdf.exe.pdf" },
  { what: "another ending", sent: "report.exe", kept: "report.exe.pdf" },
  { what: "a hidden file", sent: ".htaccess", kept: "htaccess.pdf" },
  { what: "a device of Windows", sent: "CON.pdf", kept: "file CON.pdf" },
  { what: "signs with a meaning", sent: 'a<b>|"c"?*.pdf', kept: "a-b-c-.pdf" },
  { what: "nothing", sent: "", kept: "file.pdf" },
  { what: "half a letter", sent: "a\ud83d.pdf", kept: "a.pdf" },
  { what: "a very long name", sent: `${"x".repeat(500)}.PDF`, kept: `${"x".repeat(116)}.pdf` },
];
