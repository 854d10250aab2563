import { connectionTrial } from "./connection-trial";
import { share } from "./places";

connectionTrial({ cuts: share(90), silences: share(8), longSilences: share(2) });
