const SCOPES = [
	"https://www.googleapis.com/auth/script.container.ui",
	"https://www.googleapis.com/auth/spreadsheets.currentonly",
];

/** Complaints of the manifest: the two scopes and no more, an editor add-on, the current runtime. */
export function manifestComplaints(json: string): string[] {
	const manifest = JSON.parse(json);
	const scopes = [...(manifest.oauthScopes ?? [])].sort().join(" ");
	const beyond = ["addOns", "dependencies", "urlFetchWhitelist", "webapp"]
		.filter((field) => field in manifest)
		.map((field) => `appsscript.json has ${field}`);
	return [
		...(scopes === SCOPES.join(" ")
			? []
			: [`appsscript.json asks for ${scopes || "no scope"}`]),
		...(manifest.runtimeVersion === "V8"
			? []
			: ["appsscript.json is not for V8"]),
		...beyond,
	];
}
