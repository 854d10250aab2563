export { idField, keptText, textField } from "./text-fields";
