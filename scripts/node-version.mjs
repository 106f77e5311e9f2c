/** The build tool runs on these and no others; Node 20 before 20.19 can't load it. */
const accepted = (major, minor) =>
  (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22;

/** Says in one sentence what is wrong with this Node, or nothing. */
export const nodeVersionProblem = (version = process.versions.node) => {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return accepted(major, minor)
    ? undefined
    : `Twinfloor wants Node 20.19 or newer of the 20 series, or 22.12 or newer; this is Node ${version}. Install a newer Node and run the same command again.`;
};

export const requireNode = () => {
  const problem = nodeVersionProblem();
  if (problem === undefined) return;
  process.stderr.write(`${problem}\n`);
  process.exit(1);
};
