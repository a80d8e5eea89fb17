using Workerd = import "/workerd/workerd.capnp";

const config :Workerd.Config = (services = [(name = "main", worker = .worker)]);

const worker :Workerd.Worker = (
  modules = [(name = "serve.js", esModule = embed "serve.js")],
  compatibilityDate = "2026-01-01",
);
