using System.Reflection;
using Materia.Catalogue;

namespace Materia.Tests.Architecture;

/// <summary>Inside the domain arrows go one way: Formulation → Regulation, Chemistry → Catalogue.</summary>
public class DependencyTests
{
    private static readonly Assembly Domain = typeof(Release).Assembly;

    /// <summary>Layers from the lowest to the highest; Chemistry and Regulation stand side by side.</summary>
    private static readonly Dictionary<string, string[]> MayUse = new(StringComparer.Ordinal)
    {
        ["Catalogue"] = [],
        ["Chemistry"] = ["Catalogue"],
        ["Regulation"] = ["Catalogue"],
        ["Formulation"] = ["Catalogue", "Chemistry", "Regulation"],
    };

    [Fact]
    public void Domain_EveryType_StandsInAKnownLayer() =>
        Types().Select(Layer).Distinct().Where(l => !MayUse.ContainsKey(l)).ShouldBeEmpty();

    [Fact]
    public void Domain_EveryType_UsesOnlyLowerLayers()
    {
        var wrong = Types()
            .SelectMany(t => Used(t).Where(u => u.Assembly == Domain && u.Namespace is not null).Select(u => (From: t, To: u)))
            .Where(p => Layer(p.From) != Layer(p.To) && !MayUse[Layer(p.From)].Contains(Layer(p.To)))
            .Select(p => $"{p.From.FullName} uses {p.To.FullName}")
            .Distinct();

        wrong.ShouldBeEmpty();
    }

    // One numerics package at most: the linear solver, for which nothing in the runtime stands in.
    [Fact]
    public void Domain_References_AreOnlyTheRuntimeAndTheSolver() =>
        Domain.GetReferencedAssemblies().Where(a => !a.Name!.StartsWith("System", StringComparison.Ordinal)).Select(a => a.Name).ShouldBe(["Google.OrTools"]);

    private static IEnumerable<Type> Types() => Domain.GetTypes().Where(t => t.Namespace?.StartsWith("Materia.", StringComparison.Ordinal) == true);

    private static string Layer(Type type) => type.Namespace!.Split('.')[1];

    /// <summary>What a type's members and method bodies name.</summary>
    private static IEnumerable<Type> Used(Type type)
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        var used = new List<Type?> { type.BaseType };
        used.AddRange(type.GetInterfaces());
        used.AddRange(type.GetFields(all).Select(f => f.FieldType));
        foreach (var method in type.GetMethods(all).Cast<MethodBase>().Concat(type.GetConstructors(all)))
        {
            used.AddRange(method.GetParameters().Select(p => p.ParameterType));
            used.Add((method as MethodInfo)?.ReturnType);
            used.AddRange(method.GetMethodBody()?.LocalVariables.Select(v => v.LocalType) ?? []);
            used.AddRange(Called(method));
        }

        return used.Where(u => u is not null).SelectMany(u => Flatten(u!));
    }

    /// <summary>The types whose members a method body calls: every token after a call, newobj or field instruction that resolves.</summary>
    private static IEnumerable<Type> Called(MethodBase method)
    {
        var body = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        for (var i = 0; i + 4 < body.Length; i++)
        {
            // call, callvirt, newobj, ldfld, ldsfld: a stray byte of the same value resolves to nothing or to a harmless member.
            if (body[i] is not (0x28 or 0x6F or 0x73 or 0x7B or 0x7E))
            {
                continue;
            }

            var token = BitConverter.ToInt32(body, i + 1);
            if ((token >>> 24) is not (0x04 or 0x06 or 0x0A or 0x2B))
            {
                continue;
            }

            Type? owner = null;
            try
            {
                owner = method.Module.ResolveMember(
                    token, method.DeclaringType?.IsGenericType == true ? method.DeclaringType.GetGenericArguments() : null, method.IsGenericMethod ? method.GetGenericArguments() : null)?.DeclaringType;
            }
            catch (ArgumentException)
            {
                // Not a token after all.
            }

            if (owner is not null)
            {
                yield return owner;
            }
        }
    }

    private static IEnumerable<Type> Flatten(Type type)
    {
        var inner = type.HasElementType ? type.GetElementType()! : type;
        return inner.IsGenericType ? inner.GetGenericArguments().SelectMany(Flatten).Append(inner.GetGenericTypeDefinition()) : [inner];
    }
}
