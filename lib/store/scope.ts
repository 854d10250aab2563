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

type Bounded = Exclude<Scope, { kind: "everything" }>;

/**
 * Whether a row of the table of projects, by the name that a query calls it, lies in the scope. Nothing here depends on
 * the row but its two ids, so that a database asks once for a list of many projects and not once for each of them.
 */
function reaches(scope: Bounded, called: string) {
  const [id, organisation] = [sql.ref(`${called}.id`), sql.ref(`${called}.organisation_id`)];
  switch (scope.kind) {
    case "project":
      return sql`${id} = ${scope.project}`;
    case "organisation":
      return sql`${organisation} = ${scope.organisation}`;
    case "person": {
      const belongs = sql`select organisation_id from membership where person_id = ${scope.person} and ended_at is null`;
      const lists = sql`select project_id from project_person where person_id = ${scope.person}`;
      return sql`(${organisation} in (${belongs} and role = 'administrator') or (${organisation} in (${belongs}) and ${id} in (${lists})))`;
    }
  }
}

/** Whether the project that a column of another table names lies in the scope, as a condition of SQL. */
const within = (scope: Bounded, column: string) =>
  scope.kind === "project"
    ? sql`${sql.ref(column)} = ${scope.project}`
    : sql`exists (select 1 from project as scoped where scoped.id = ${sql.ref(column)} and ${reaches(scope, "scoped")})`;

/** Puts the condition of a scope on every query, those within others too. */
export function scopePlugin(scope: Bounded): KyselyPlugin {
  const transformer = new Scoped(scope);
  return {
    transformQuery: ({ node, queryId }: PluginTransformQueryArgs) => transformer.transformNode(node, queryId),
    transformResult: async ({ result }: PluginTransformResultArgs) => result,
  };
}

class Scoped extends OperationNodeTransformer {
  constructor(private readonly scope: Bounded) {
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
      const { called, column, isProject } = columnOf(table);
      const condition = (
        isProject ? reaches(this.scope, called) : within(this.scope, `${called}.${column}`)
      ).toOperationNode();
      where = WhereNode.create(
        where === undefined ? condition : AndNode.create(ParensNode.create(where.where), condition),
      );
    }
    return where === undefined ? query : { ...query, where };
  }
}

/**
 * The column that names the project of a row, and the name by which the query calls the table.
 * @throws RangeError for a table that belongs to no project, and for what is no table
 */
function columnOf(node: OperationNode): Readonly<{ called: string; column: string; isProject: boolean }> {
  const aliased = AliasNode.is(node);
  const table = aliased ? node.node : node;
  if (!TableNode.is(table)) throw new RangeError(`a query on ${table.kind} can’t be kept within a scope`);
  const name = table.table.identifier.name;
  const column = projectColumns[name as keyof Tables];
  if (column === undefined) throw new RangeError(`${name} belongs to no project and can’t be reached within a scope`);
  const called = aliased && "name" in node.alias ? String(node.alias.name) : name;
  return { called, column, isProject: name === "project" };
}
