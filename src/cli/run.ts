import { parseArgs } from "node:util";
import { AtFault, type Io, Misuse } from "./io.ts";
import type { Verb } from "./verb.ts";
import { verbs } from "./verbs/index.ts";
import { visible } from "./visible.ts";

const usage = (): string =>
  [
    "understudy <verb> FILE [options]   (add --json for one JSON document)",
    ...[...verbs].map(([name, verb]) => `  ${name.padEnd(11)}${verb.usage}`),
    "",
  ].join("\n");

function parse(verb: Verb, args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: { ...verb.options, ...(verb.hasJson ? { json: { type: "boolean" as const } } : {}) },
      allowPositionals: true,
      strict: true,
    });
  } catch (error) {
    throw new Misuse(error instanceof Error ? error.message : "these options are not known");
  }
}

function verbNamed(name: string | undefined): Verb {
  const verb = name === undefined ? undefined : verbs.get(name);
  if (verb) return verb;
  throw new Misuse(name === undefined ? "say what to do" : `"${name}" is not one of the verbs`);
}

function answer(args: readonly string[], io: Io): void {
  const verb = verbNamed(args[0]);
  const { values, positionals } = parse(verb, args.slice(1));
  if (positionals.length !== verb.operands) throw new Misuse(`it takes: ${verb.usage}`);
  const { json, text } = verb.run({ operands: positionals, options: values, io });
  io.out(values.json === true ? `${JSON.stringify(json(), null, 2)}\n` : text());
}

function sayFaults(error: AtFault, asJson: boolean, io: Io): void {
  if (asJson) io.out(`${JSON.stringify({ faults: error.faults }, null, 2)}\n`);
  else {
    for (const { place, problem, remedy } of error.faults)
      io.err(`${visible(`${place}: ${problem}; ${remedy}`)}\n`);
  }
}

/**
 * Runs one command.
 * @returns the exit code: 0 done, 1 the input is at fault, 2 the command is misused
 */
export function run(args: readonly string[], io: Io): 0 | 1 | 2 {
  if (args[0] === undefined || args[0] === "help" || args[0] === "--help") {
    io[args[0] === undefined ? "err" : "out"](usage());
    return args[0] === undefined ? 2 : 0;
  }
  try {
    answer(args, io);
    return 0;
  } catch (error) {
    if (error instanceof AtFault) {
      sayFaults(error, args.includes("--json"), io);
      return 1;
    }
    if (error instanceof Misuse) {
      io.err(`understudy: ${error.message}\n\n${usage()}`);
      return 2;
    }
    // A bug of ours: one plain line all the same, never a stack trace.
    io.err(
      `file: something went wrong inside (${error instanceof Error ? error.message : "unknown"}); please report it\n`,
    );
    return 1;
  }
}
