// npm run verify-record: verifies record and kept files of every project and ends with 1 if one does not hold.
import { environmentLocation } from "#lib/store";
import { verifiedRecords } from "./verified-records";

if (!(await verifiedRecords(environmentLocation()))) process.exitCode = 1;
