export { checkedContent } from "./checked-content";
export { contentDisposition } from "./content-disposition";
export { contentKind } from "./content-kind";
export { attachmentLimits } from "./limits";
export { type Attachment, type AttachmentOwner, type FileKind, fileKinds } from "./model";
export { type AttachmentProblem, explainAttachment } from "./problem";
export { attachmentNamed, firstPage } from "./reference";
export { safeName } from "./safe-name";
export { attachmentSchema } from "./schema";
