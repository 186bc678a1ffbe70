using Materia.Catalogue;
using Materia.Catalogue.Needs;
using Materia.Catalogue.Regulated;
using Materia.Data.Configurations;
using Materia.Data.Engines;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Conventions;

namespace Materia.Data;

/// <summary>
/// The one model of the database. Each engine has a context of its own only because that is how a migration set for each is
/// kept; callers use this type.
/// </summary>
public abstract class MateriaContext : DbContext
{
    private protected MateriaContext(DbContextOptions options)
        : base(options)
    {
    }

    /// <summary>How the engine writes conditions.</summary>
    internal abstract SqlDialect Dialect { get; }

    /// <summary>Waits, within the transaction that is open, until no other transaction publishes; the lock ends with the transaction.</summary>
    internal abstract Task LockPublishingAsync(CancellationToken cancellation);

    /// <summary>Writes rows of one class, within the transaction that is open.</summary>
    internal abstract Task InsertAsync(TableColumns columns, IEnumerable<object> rows, CancellationToken cancellation);

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        // A key to another table is searched only when a whole release is deleted: indexes would cost every publish and help no read.
        configurationBuilder.Conventions.Remove<ForeignKeyIndexConvention>();
        Words<ReleaseOrigin>(configurationBuilder);
        Words<Evidence>(configurationBuilder);
        Words<SourceKind>(configurationBuilder);
        Words<Exposure>(configurationBuilder);
        Words<BodySite>(configurationBuilder);
        Words<IngredientKind>(configurationBuilder);
        Words<NameKind>(configurationBuilder);
        Words<Registry>(configurationBuilder);
        Words<Property>(configurationBuilder);
        Words<ProfileKind>(configurationBuilder);
        Words<ProfilePart>(configurationBuilder);
        Words<OriginKind>(configurationBuilder);
        Words<AllergenFamily>(configurationBuilder);
        Words<IonicCharge>(configurationBuilder);
        Words<HandlingTopic>(configurationBuilder);
        Words<ProcessPhase>(configurationBuilder);
        Words<BodySubject>(configurationBuilder);
        Words<Authority>(configurationBuilder);
        Words<LimitKind>(configurationBuilder);
        Words<NeedSubject>(configurationBuilder);
        Words<NeedEffectKind>(configurationBuilder);
        Words<TargetProperty>(configurationBuilder);
        Dialect.MapTypes(configurationBuilder);
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.ApplyConfiguration(new ReleaseConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new SourceConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new FattyAcidConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new ProductUseConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new SubstitutionGroupConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new IngredientConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new FormerIdConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new IngredientOriginConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new OriginAllergenFamilyConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new IngredientNameConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new RegistryNumberConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new IngredientFunctionConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new PropertyFigureConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new FattyAcidProfileConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new FattyAcidShareConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new TriacylglycerolProfileConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new TriacylglycerolShareConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new ConstituentConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new IngredientDescriptionConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new IngredientChargeConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new CompositePartConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new UsageLevelConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new HandlingNoteConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new SubstitutionMembershipConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new BodyNoteConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new ComedogenicNoteConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new CautionConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new InventoryImportConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new InventoryEntryConfiguration());
        modelBuilder.ApplyConfiguration(new InventoryNumberConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new RegulatedLimitConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new LimitMemberConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new LimitSiteConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new LimitUseConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new LimitCategoryConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new LimitExceptionConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new AllergenConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new AllergenMemberConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new NeedConfiguration(Dialect));
        modelBuilder.ApplyConfiguration(new NeedEffectConfiguration(Dialect));
        SnakeCaseNames.Apply(modelBuilder);
        DecimalColumns.Check(modelBuilder, Dialect);
    }

    private static void Words<T>(ModelConfigurationBuilder configuration)
        where T : struct, Enum => configuration.Properties<T>().HaveConversion<KebabCaseConverter<T>>();
}
