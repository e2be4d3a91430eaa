-- Posts the bodies named on the command line in turn: <path> <folder> <name>...; to /idle each by its name
local requests = {}
local at = 0

function init(args)
  local to, folder = args[1], args[2]
  for i = 3, #args do
    local file = assert(io.open(folder .. "/" .. args[i] .. ".json", "rb"))
    local body = file:read("*a")
    file:close()
    local path = to == "/idle" and "/idle/" .. args[i] or to
    requests[#requests + 1] =
      wrk.format("POST", path, { ["Content-Type"] = "application/json" }, body)
  end
end

function request()
  at = at % #requests + 1
  return requests[at]
end

function done(summary, latency, counts)
  local errors = summary.errors
  local failed = errors.connect + errors.read + errors.write + errors.status + errors.timeout
  io.write(
    string.format(
      "RESULT %.1f %.3f %.3f %d\n",
      summary.requests / (summary.duration / 1e6),
      latency:percentile(50) / 1e3,
      latency:percentile(99) / 1e3,
      failed
    )
  )
end
