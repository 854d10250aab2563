export { type Asks, actions, type Door, doorAt, doors } from "./doors";
export {
  type Editor,
  type EditorNameProblem,
  editorNamed,
  explainEditorName,
  localEditor,
  signedInEditor,
  unlistedIn,
} from "./editor";
export { cookieFromEditor, editorCookie, editorFromCookie } from "./editor-cookie";
export { idOfName } from "./id-of-name";
export { isLoopbackHost } from "./loopback";
export { isSameOrigin, type OriginHeaders } from "./same-origin";
export { attemptsForgottenAfter, type Failures, failedOnceMore, waitAfter } from "./throttle";
