import { readdirSync, readFileSync } from "node:fs";
import { parseAst } from "vite";

/** A node of the syntax tree, of whatever kind. */
type Node = Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && "type" in value;

const childrenOf = (node: Node): readonly Node[] => Object.values(node).flat().filter(isNode);

const nameOf = (node: unknown): string => {
  if (!isNode(node)) return "";
  if (node.type === "MemberExpression") return nameOf(node.property);
  return String(node.name ?? node.value ?? "");
};

/** What is put where a template has an expression: one of these fits every template there is. */
const fillings = ["SEK", "7", "kit", "a list", '"x"'];

/** A sentence as the code has it; a template once with each filling. */
export type Sentence = Readonly<{ file: string; forms: readonly string[] }>;

/** The texts that an expression may come to. */
function textsOf(node: unknown): readonly (readonly string[])[] {
  if (!isNode(node)) return [];
  if (node.type === "Literal")
    return typeof node.value === "string" && node.value !== "" ? [[node.value]] : [];
  if (node.type === "TemplateLiteral") {
    const parts = [node.quasis]
      .flat()
      .map((part) => String(Reflect.get(Object(Reflect.get(Object(part), "value")), "cooked")));
    return [fillings.map((filling) => parts.join(filling))];
  }
  if (node.type === "ConditionalExpression") return [...textsOf(node.consequent), ...textsOf(node.alternate)];
  return [];
}

const partNames = /^(problem|remedy|notice)$/;
const checks = /^(refine|regex|minLength|maxLength|minimum|maximum|gt|gte|lt|lte|length)$/;

/** Functions that are handed a fault's sentences, and which of their arguments those are. */
type Makers = ReadonlyMap<string, readonly number[]>;

const spokenParams = (made: unknown): readonly number[] =>
  isNode(made)
    ? [made.params].flat().flatMap((param, at) => (partNames.test(nameOf(param)) ? [at] : []))
    : [];

function makersIn(node: Node): readonly (readonly [string, readonly number[]])[] {
  const made = node.type === "VariableDeclarator" ? node.init : node;
  const here = spokenParams(made);
  const inner = childrenOf(node).flatMap(makersIn);
  return here.length > 0 && nameOf(node.id) !== "" ? [[nameOf(node.id), here], ...inner] : inner;
}

/** The sentences that one node makes: a fault's parts by their names, a fault's maker, or a schema's check. */
function saidBy(node: Node, makers: Makers): readonly (readonly string[])[] {
  const { type } = node;
  if (type === "Property") return partNames.test(nameOf(node.key)) ? textsOf(node.value) : [];
  if (type === "VariableDeclarator") return partNames.test(nameOf(node.id)) ? textsOf(node.init) : [];
  if (type === "AssignmentPattern") return partNames.test(nameOf(node.left)) ? textsOf(node.right) : [];
  if (type !== "CallExpression") return [];
  const callee = nameOf(node.callee);
  const given = [node.arguments].flat();
  const spoken = makers.get(callee);
  if (spoken) return spoken.flatMap((at) => textsOf(given[at]));
  if (!checks.test(callee)) return [];
  return given
    .slice(1)
    .flatMap(textsOf)
    .flatMap((forms) => (forms[0] ?? "").split("; ").map((part) => [part]));
}

const sentencesIn = (node: Node, makers: Makers): readonly (readonly string[])[] => [
  ...saidBy(node, makers),
  ...childrenOf(node).flatMap((child) => sentencesIn(child, makers)),
];

const treeOf = (file: string): readonly Node[] => {
  const tree: unknown = parseAst(readFileSync(file, "utf8"), { lang: "ts" });
  return isNode(tree) ? [tree] : [];
};

/** Every sentence of a fault or a notice that the sources under these folders can make, read from their syntax. */
export function faultSentences(folders: readonly string[]): readonly Sentence[] {
  const files = folders
    .flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: "utf8" }).map((path) => `${folder}/${path}`),
    )
    // What stands in a folder's own words has its Swedish beside it.
    .filter((path) => path.endsWith(".ts") && !path.includes("/words/"))
    .map((file) => ({ file, trees: treeOf(file) }));
  const makers = new Map(files.flatMap(({ trees }) => trees.flatMap(makersIn)));
  return files.flatMap(({ file, trees }) =>
    trees.flatMap((tree) => sentencesIn(tree, makers)).map((forms) => ({ file, forms })),
  );
}
