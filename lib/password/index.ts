export { explainPassword, type PasswordProblem, passwordLength, passwordProblem } from "./password";
