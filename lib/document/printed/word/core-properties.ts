import type { PrintedDocument } from "../model";
import { printable } from "../runs";

const escaped = (text: string) =>
  printable(text).replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/**
 * Title, author, language and day of the document, as its properties show them.
 * @source ECMA-376 part 2, core properties; element names of Dublin Core
 */
export const coreProperties = ({ title, subtitle, author, language, date }: PrintedDocument): string =>
  `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><dc:title>${escaped(title)}</dc:title><dc:subject>${escaped(subtitle)}</dc:subject><dc:creator>${escaped(author)}</dc:creator><cp:lastModifiedBy>${escaped(author)}</cp:lastModifiedBy><dc:language>${language}</dc:language><dcterms:created xsi:type="dcterms:W3CDTF">${date}T00:00:00Z</dcterms:created><dcterms:modified xsi:type="dcterms:W3CDTF">${date}T00:00:00Z</dcterms:modified></cp:coreProperties>`;
