import { existsSync } from "node:fs";
import { succeeds } from "./steps";

/** Whether this is a machine on which programs may be installed without asking: Debian, as its root. */
export const isDebianRoot = (): boolean =>
	process.getuid?.() === 0 &&
	existsSync("/etc/debian_version") &&
	existsSync("/usr/bin/apt-get");

/** Installs one of Debian's packages. */
export function install(name: string): boolean {
	return (
		succeeds("apt-get", ["update", "-q"]) &&
		succeeds("apt-get", [
			"install",
			"-y",
			"-q",
			"--no-install-recommends",
			name,
		])
	);
}
