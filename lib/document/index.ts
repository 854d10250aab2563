export {
  explainProjectFile,
  type ProjectFileProblem,
  type ProjectTexts,
  projectFileJsonSchema,
  projectFileOf,
  type ReadProjectFile,
  readProjectFile,
} from "./project-file";
