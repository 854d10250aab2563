import { cache } from "react";
import { openSheetsOf, startingCommittee } from "#lib/committee";
import { startingCosting } from "#lib/cost";
import { evaluate, type Project, type StandingDocuments, withoutNames } from "#lib/evaluation";
import { startingProcedure } from "#lib/procedure";
import { nothingWritten } from "#lib/recommendation";
import { startingSpecification } from "#lib/requirement";
import { startingContract, startingDelivery } from "#lib/submittal";
import { readersNames } from "../_names";
import { projectStore } from "./store";

/**
 * A stored project read for one request; null if there is none of that id. Where the reader hides names, the model holds
 * none, so that no page can show one; the documents keep their text for the forms that edit it.
 */
export const loadProject = cache(async (id: string) => {
  const stored = await (await projectStore()).projects.load(id);
  if (stored === null) return null;
  const [brief] = stored.documents.brief;
  const [requirements] = stored.documents.requirements;
  const [costing] = stored.documents.costing;
  const [recommendation] = stored.documents.recommendation;
  const [specification] = stored.documents.specification;
  const [people] = stored.documents.people;
  const [procedure] = stored.documents.procedure;
  const [committee] = stored.documents.committee;
  const { bid: bids, campaign: campaigns, attachment: attachments, issue: issues } = stored.documents;
  const { scoresheet: scoresheets, "sealed-prices": sealedPrices } = stored.documents;
  const [contract] = stored.documents.contract;
  const [delivery] = stored.documents.delivery;
  const { submittal: submittals, substitution: substitutions, release: releases } = stored.documents;
  if (brief === undefined || requirements === undefined)
    throw new Error(`project ${id} lacks its brief or requirements`);
  const stages = procedure?.model ?? startingProcedure;
  const project: Project = {
    brief: brief.model,
    requirements: requirements.model,
    bids: bids.map((bid) => ({ id: bid.id, ...bid.model })),
    costing: costing?.model ?? startingCosting,
    campaigns: campaigns.map((campaign) => ({ id: campaign.id, ...campaign.model })),
    attachments: attachments.map((attachment) => ({ id: attachment.id, ...attachment.model })),
    specification: specification?.model ?? startingSpecification,
    people: people?.model.people ?? [],
    procedure: stages,
    committee: {
      ...(committee?.model ?? startingCommittee),
      sheets: openSheetsOf(scoresheets.map(({ model }) => model)),
    },
    contract: contract?.model ?? startingContract,
    delivery: delivery?.model ?? startingDelivery,
    substitutions: substitutions.map((substitution) => ({ id: substitution.id, ...substitution.model })),
    submittals: submittals.map((submittal) => ({ id: submittal.id, ...submittal.model })),
  };
  const documents = {
    ...{ brief, requirements, bids, campaigns, attachments, issues, scoresheets, sealedPrices },
    ...{ costing: costing ?? null, recommendation: recommendation ?? null, specification: specification ?? null },
    ...{ people: people ?? null, procedure: procedure ?? null, committee: committee ?? null },
    ...{ contract: contract ?? null, submittals, delivery: delivery ?? null, substitutions, releases },
  };
  const shown = (await readersNames()) === "hidden" ? withoutNames(project) : project;
  return {
    ...{ summary: stored.summary, project: shown, documents, procedure: stages },
    standing: ((kind) => stored.documents[kind]) as StandingDocuments,
    ownersWords: recommendation?.model ?? nothingWritten,
  };
});

/** The evaluation of a stored project, worked out once a request. */
export const loadEvaluation = cache(async (id: string) => {
  const loaded = await loadProject(id);
  return loaded === null ? null : { ...loaded, evaluation: evaluate(loaded.project) };
});
