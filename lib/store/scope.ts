import {
  AliasNode,
  AndNode,
  type DeleteQueryNode,
  type InsertQueryNode,
  type KyselyPlugin,
  type OperationNode,
  OperationNodeTransformer,
  ParensNode,
  type PluginTransformQueryArgs,
  type PluginTransformResultArgs,
  type QueryId,
  type SelectQueryNode,
  sql,
  TableNode,
  type UpdateQueryNode,
  WhereNode,
} from "kysely";
import type { Tables } from "./tables";

/**
 * Which projects somebody may reach at all. This is the one place where that is said: every query that a store makes on
 * behalf of somebody passes here, and rows of other projects are not there for it, neither to read nor to write.
 */
export type Scope = Readonly<
  /** All projects of all organisations: for commands at the server, never for a request. */
  | { kind: "everything" }
  /** All projects of one organisation: on one computer, where nobody signs in. */
  | { kind: "organisation"; organisation: string }
  /** What a person may reach: all of an organisation that they administer, and where they are a member the projects whose list of people names them. */
  | { kind: "person"; person: string }
  /** One project, to read: whoever follows a link that was given out. */
  | { kind: "project"; project: string }
>;

/** Tables that belong to projects, with the column that names the project. No other table can be reached within a scope. */
const projectColumns: Readonly<Partial<Record<keyof Tables, string>>> = {
  project: "id",
  document: "project_id",
  draft: "project_id",
  record: "project_id",
  content: "project_id",
  content_part: "project_id",
  seal: "project_id",
  project_person: "project_id",
  presence: "project_id",
};

/** Whether the project that `column` names lies in the scope, as a condition of SQL. */
function within(scope: Exclude<Scope, { kind: "everything" }>, column: string) {
  const named = sql`scoped.id = ${sql.ref(column)}`;
  switch (scope.kind) {
    case "project":
      return sql`${sql.ref(column)} = ${scope.project}`;
    case "organisation":
      return sql`exists (select 1 from project as scoped where ${named} and scoped.organisation_id = ${scope.organisation})`;
    case "person":
      return sql`exists (select 1 from project as scoped join membership on membership.organisation_id = scoped.organisation_id
        where ${named} and membership.person_id = ${scope.person} and membership.ended_at is null
        and (membership.role = 'administrator' or exists (select 1 from project_person as listed
          where listed.project_id = scoped.id and listed.person_id = ${scope.person})))`;
  }
}

/** Puts the condition of a scope on every query, those within others too. */
export function scopePlugin(scope: Exclude<Scope, { kind: "everything" }>): KyselyPlugin {
  const transformer = new Scoped(scope);
  return {
    transformQuery: ({ node, queryId }: PluginTransformQueryArgs) => transformer.transformNode(node, queryId),
    transformResult: async ({ result }: PluginTransformResultArgs) => result,
  };
}

class Scoped extends OperationNodeTransformer {
  constructor(private readonly scope: Exclude<Scope, { kind: "everything" }>) {
    super();
  }

  protected override transformSelectQuery(node: SelectQueryNode, queryId?: QueryId): SelectQueryNode {
    const query = super.transformSelectQuery(node, queryId);
    const joined = (query.joins ?? []).map(({ joinType, table }) => {
      if (joinType !== "InnerJoin") throw new RangeError(`a ${joinType} can’t be kept within a scope`);
      return table;
    });
    return this.narrowed(query, [...(query.from?.froms ?? []), ...joined]);
  }

  protected override transformUpdateQuery(node: UpdateQueryNode, queryId?: QueryId): UpdateQueryNode {
    this.assertWrites();
    const query = super.transformUpdateQuery(node, queryId);
    return query.table === undefined ? query : this.narrowed(query, [query.table]);
  }

  protected override transformDeleteQuery(node: DeleteQueryNode, queryId?: QueryId): DeleteQueryNode {
    this.assertWrites();
    const query = super.transformDeleteQuery(node, queryId);
    return this.narrowed(query, query.from.froms);
  }

  /** What is added belongs to a project that its transaction has taken the lock on, which a scope does not let it take elsewhere. */
  protected override transformInsertQuery(node: InsertQueryNode, queryId?: QueryId): InsertQueryNode {
    this.assertWrites();
    const query = super.transformInsertQuery(node, queryId);
    if (query.into !== undefined) columnOf(query.into);
    return query;
  }

  private assertWrites(): void {
    if (this.scope.kind === "project") throw new RangeError("whoever follows a link for the public changes nothing");
  }

  private narrowed<Q extends SelectQueryNode | UpdateQueryNode | DeleteQueryNode>(
    query: Q,
    tables: readonly OperationNode[],
  ): Q {
    let { where } = query;
    for (const table of tables) {
      const condition = within(this.scope, columnOf(table)).toOperationNode();
      where = WhereNode.create(
        where === undefined ? condition : AndNode.create(ParensNode.create(where.where), condition),
      );
    }
    return where === undefined ? query : { ...query, where };
  }
}

/**
 * The column that names the project of a row, with the name by which the query calls the table.
 * @throws RangeError for a table that belongs to no project, and for what is no table
 */
function columnOf(node: OperationNode): string {
  const aliased = AliasNode.is(node);
  const table = aliased ? node.node : node;
  if (!TableNode.is(table)) throw new RangeError(`a query on ${table.kind} can’t be kept within a scope`);
  const name = table.table.identifier.name;
  const column = projectColumns[name as keyof Tables];
  if (column === undefined) throw new RangeError(`${name} belongs to no project and can’t be reached within a scope`);
  const called = aliased && "name" in node.alias ? String(node.alias.name) : name;
  return `${called}.${column}`;
}
