export {
  explainProjectFile,
  type ProjectFileProblem,
  type ProjectTexts,
  projectFileJsonSchema,
  projectFileOf,
  type ReadProjectFile,
  readProjectFile,
} from "./project-file";
export { type DecidingFigure, type Recommendation, recommendation } from "./recommendation";
export type { Support } from "./support";
