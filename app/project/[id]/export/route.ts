import { projectFileOf } from "#lib/document";
import { loadProject } from "../../../_data/load-project";
import { download, fileName, notHere } from "../_file-name";

/** The project as one file: text as entered, to be opened on another computer, compared or archived. */
export async function GET(_request: Request, { params }: RouteContext<"/project/[id]/export">): Promise<Response> {
  const { id: project } = await params;
  const loaded = await loadProject(project);
  if (loaded === null) return notHere("project");
  const { brief, requirements, bids, campaigns, costing } = loaded.documents;
  const { recommendation, attachments, specification, issues } = loaded.documents;
  const { people, procedure, committee, scoresheets, contract, submittals, delivery, substitutions } = loaded.documents;
  const file = projectFileOf({
    id: project,
    brief: brief.body,
    requirements: requirements.body,
    bids: bids.map(({ id, body }) => ({ id, text: body })),
    campaigns: campaigns.map(({ id, body }) => ({ id, text: body })),
    costing: costing?.body ?? null,
    recommendation: recommendation?.body ?? null,
    attachments: attachments.map(({ id, body }) => ({ id, text: body })),
    specification: specification?.body ?? null,
    issues: issues.map(({ body }) => body),
    people: people?.body ?? null,
    procedure: procedure?.body ?? null,
    committee: committee?.body ?? null,
    scoresheets: scoresheets.map(({ body }) => body),
    contract: contract?.body ?? null,
    delivery: delivery?.body ?? null,
    substitutions: substitutions.map(({ id, body }) => ({ id, text: body })),
    submittals: submittals.map(({ id, body }) => ({ id, text: body })),
  });
  return download(
    `${JSON.stringify(file, null, 2)}\n`,
    fileName([brief.body.name], "evenfield.json"),
    "application/json; charset=utf-8",
  );
}
